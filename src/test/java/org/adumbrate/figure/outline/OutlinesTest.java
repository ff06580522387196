package org.adumbrate.figure.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.Space;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class OutlinesTest {
    @TempDir
    Path folder;

    private FigureOutline read(String content) throws IOException {
        Path file = folder.resolve("someone.svg");
        Files.writeString(file, "<svg xmlns='http://www.w3.org/2000/svg'>" + content + "</svg>");
        return OutlineFiles.read(file);
    }

    @Test
    void anOriginOnTheLowerEdgeIsTheFoot() throws IOException {
        FigureOutline outline = read("<rect x='-50' y='-300' width='400' height='300'/>");
        assertThat(outline.name()).isEqualTo("someone");
        assertThat(outline.height()).isEqualTo(300);
        assertThat(outline.nominalM()).isEmpty();
        assertThat(outline.body().extent()).contains(new Extent(-50, -300, 350, 0));
    }

    /** A post 20 wide on the right of a board that juts out to the left, drawn with the origin at the page's corner. */
    @Test
    void elseTheMiddleOfTheLowestTenthIsTheFoot() throws IOException {
        FigureOutline outline =
                read("<rect x='200' y='100' width='20' height='300'/><rect x='100' y='100' width='100' height='200'/>");
        assertThat(outline.height()).isEqualTo(300);
        assertThat(outline.body().extent()).contains(new Extent(-110, -300, 10, 0));
    }

    @Test
    void aLineOnTheGroundIsNoFigure() {
        assertThatThrownBy(() -> read("<rect width='9000' height='1'/>"))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("without height");
    }

    static Iterable<String> names() {
        return ShippedOutlines.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void whatComesWithTheProgramStandsOnItsFootInMillimetres(String name) throws IOException {
        FigureOutline outline = ShippedOutlines.named(name).orElseThrow();
        Extent extent = outline.body().extent().orElseThrow();
        boolean bird = ShippedOutlines.names(OutlineKind.BIRD).contains(name);
        if (!bird) {
            assertThat(outline.height()).isCloseTo(1000 * outline.nominalM().orElseThrow(), within(3.0));
            assertThat(extent.bottom()).isCloseTo(0, within(3.0));
            assertThat(extent.left()).isNegative();
            assertThat(extent.right()).isPositive();
        }
        try (InputStream in = ShippedOutlines.class.getResourceAsStream(name + ".svg")) {
            assertThat(in.readAllBytes()).hasSizeLessThan(8192);
        }
    }

    @Test
    void eachKindHasItsNamesAndNoOtherIsKnown() {
        assertThat(ShippedOutlines.names(OutlineKind.PERSON))
                .contains("standing", "walking", "seated", "leaning", "child", "wheelchair", "cyclist", "with-bag")
                .hasSizeGreaterThanOrEqualTo(8);
        assertThat(ShippedOutlines.names(OutlineKind.PLANT)).contains("bush-round", "grass-tuft", "grass-tall");
        assertThat(ShippedOutlines.names(OutlineKind.BIRD)).contains("bird-gliding");
        assertThat(ShippedOutlines.names()).doesNotHaveDuplicates();
        assertThat(ShippedOutlines.named("dancing")).isEmpty();
    }

    /** Medians and shoes as the table of sizes names them, in mm. */
    @Test
    void nominalSizesFollowFromTheirSources() {
        assertThat(nominal("standing")).isCloseTo(1755 + 25, within(5.0));
        assertThat(nominal("arms-folded")).isCloseTo(1626 + 25, within(5.0));
        assertThat(nominal("seated")).isCloseTo((918 + 430 + 857 + 387) / 2.0 + 25, within(5.0));
        assertThat(nominal("child")).isCloseTo((1157 + 1150) / 2.0 + 15, within(5.0));
        assertThat(nominal("wheelchair")).isCloseTo((1090 + 1295) / 2.0 + 918 - 804, within(5.0));
    }

    private static double nominal(String name) {
        return 1000 * ShippedOutlines.named(name).orElseThrow().nominalM().orElseThrow();
    }

    /** A head is a seventh to an eighth of an adult's height: so far below the top the outline is a neck's width. */
    @Test
    void peopleAreWellProportioned() {
        for (String name : new String[] {"standing", "arms-folded", "walking"}) {
            FigureOutline outline = ShippedOutlines.named(name).orElseThrow();
            double neck = widthAt(outline, -outline.height() * (1 - 1 / 6.4));
            double head = widthAt(outline, -outline.height() * (1 - 1 / 14.0));
            assertThat(neck).as(name).isBetween(80.0, 160.0);
            assertThat(head).as(name).isBetween(130.0, 230.0);
        }
    }

    private static double widthAt(FigureOutline outline, double y) {
        return outline.body()
                .within(Region.rectangle(Space.PAGE, -1000, y - 1, 1000, y + 1))
                .extent()
                .orElseThrow()
                .width();
    }
}
