package org.adumbrate.sheetfile.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.adumbrate.geometry.SheetSize;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The table of papers against the published sizes; papers.csv names their sources. */
class PaperTest {
    @ParameterizedTest
    @CsvFileSource(resources = "papers.csv", numLinesToSkip = 3)
    void liesAsItsNameSays(String name, double shorterMm, double longerMm) {
        assertSize(Paper.named(name + " portrait").orElseThrow(), shorterMm, longerMm);
        assertSize(Paper.named(name + " landscape").orElseThrow(), longerMm, shorterMm);
    }

    private static void assertSize(SheetSize size, double widthMm, double heightMm) {
        assertThat(size.widthMm()).isCloseTo(widthMm, within(1e-9));
        assertThat(size.heightMm()).isCloseTo(heightMm, within(1e-9));
    }

    @Test
    void thePatternKnowsAllPapersAndNoOther() {
        assertThat(Paper.names()).hasSize(34).allMatch(name -> name.matches(Paper.PATTERN));
        assertThat(List.of("A3", "A6 portrait", "ANSI F landscape", "Arch E2 portrait", "a3 portrait"))
                .noneMatch(name -> name.matches(Paper.PATTERN))
                .allMatch(name -> Paper.named(name).isEmpty());
    }

    @Test
    void aSizeHasTheNameOfItsPaperHoweverAnExporterRoundedIt() {
        assertThat(PaperSize.nameOf(new SheetSize(431.8, 279.4))).contains("ANSI B landscape");
        assertThat(PaperSize.nameOf(new SheetSize(1191 * 25.4 / 72, 842 * 25.4 / 72)))
                .contains("A3 landscape");
        assertThat(PaperSize.nameOf(new SheetSize(421, 297))).isEmpty();
    }
}
