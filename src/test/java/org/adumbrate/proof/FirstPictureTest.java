package org.adumbrate.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.open.Edition;
import org.adumbrate.prepare.open.HeadStart;
import org.adumbrate.prepare.open.OpenSheet;
import org.adumbrate.proof.picture.PictureDesk;
import org.adumbrate.proof.picture.PictureView;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a page is shown of a sheet that has just been opened. */
class FirstPictureTest {
    private final PictureDesk desk = new PictureDesk();

    @TempDir
    private Path folder;

    private Map<?, ?> picture(Edition edition, boolean coarse) throws IOException, Refusal {
        PictureView view = PictureView.of(new double[] {200, 120}, new double[] {0, 0, 200, 120});
        return (Map<?, ?>) desk.recipe(edition, view, coarse);
    }

    private static int tiles(Map<?, ?> picture) {
        return ((List<?>) ((Map<?, ?>) picture.get("ink")).get("tiles")).size();
    }

    @Test
    void isOfTheLinesAloneUntilTheSheetIsReadyAndNeverAfterwards() throws IOException, Refusal {
        try (Memory memory = Memory.inMemory()) {
            OpenSheet sheet = OpenSheet.of(SmallSheet.in(folder), memory);
            Edition edition = sheet.edition(SmallSheet.TEXT);

            Map<?, ?> lines = picture(edition, true);
            assertThat(edition.isReady()).isFalse();
            assertThat(lines.get("exact")).isEqualTo(false);
            assertThat((List<?>) lines.get("passes")).isEmpty();
            assertThat(tiles(lines)).isPositive();

            Map<?, ?> all = picture(edition, false);
            assertThat(edition.isReady()).isTrue();
            assertThat(all.get("exact")).isEqualTo(true);
            assertThat((List<?>) all.get("passes")).hasSize(2);
            assertThat((List<?>) picture(edition, true).get("passes")).hasSize(2);

            Edition next = sheet.edition(SmallSheet.TEXT.replace("opacity: 60", "opacity: 50"));
            assertThat((List<?>) picture(next, true).get("passes")).hasSize(2);
        }
    }

    @Test
    void theSizeIsKnownBeforeAnythingElse() throws IOException, Refusal {
        try (Memory memory = Memory.inMemory()) {
            OpenSheet sheet = OpenSheet.of(SmallSheet.in(folder), memory);
            Edition stated = sheet.edition(SmallSheet.TEXT);
            assertThat(stated.size()).isEqualTo(new SheetSize(100, 60));
            Edition ofItsPage = sheet.edition(SmallSheet.TEXT.replace("size: 100 x 60 mm\n", ""));
            assertThat(ofItsPage.size().widthMm()).isCloseTo(100, offset(0.01));
            assertThat(stated.isReady() || ofItsPage.isReady()).isFalse();
        }
    }

    @Test
    void whatCannotBeReadAheadIsLeftToWhoeverOpensIt() throws IOException, InterruptedException {
        try (Memory memory = Memory.inMemory()) {
            HeadStart none = HeadStart.of(folder.resolve("none.sheet.yaml"), memory);
            none.await();
            HeadStart lines = HeadStart.of(SmallSheet.in(folder), memory);
            lines.await();
            assertThat(lines.memory()).isSameAs(memory);
        }
    }
}
