package org.adumbrate.prepare.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.cli.DemoCopy;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.open.Edition;
import org.adumbrate.prepare.open.OpenSheet;
import org.adumbrate.sheetfile.yaml.YamlText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HeldUnderlayTest {
    private static final PixelSize WHOLE = new PixelSize(440, 285);

    /** Two rounds of so many make more parts than are remembered. */
    private static final int MANY = 2500;

    @TempDir
    private Path folder;

    @Test
    void lightPastFiguresThatIsHeldIsNotMadeCoarselyOnceMore() throws IOException, Refusal {
        Path file = DemoCopy.kilnYard(folder).resolve("kiln-yard.sheet.yaml");
        try (Memory memory = Memory.inMemory()) {
            Edition edition = OpenSheet.of(file, memory).edition(YamlText.unmarked(YamlText.whole(file)));
            assertThat(isExact(edition, true)).as("the first time").isFalse();
            for (int round = 0; round < 3; round++) {
                assertThat(isExact(edition, false)).isTrue();
                remember(round, edition);
            }
            assertThat(isExact(edition, true)).as("when it is held").isTrue();
        }
    }

    private static boolean isExact(Edition edition, boolean coarse) throws IOException, Refusal {
        return edition.make((sheet, run) -> SheetPicture.of(sheet, Canvas.whole(sheet.size(), WHOLE), run, coarse)
                .underlay()
                .isExact());
    }

    /** What many edits leave behind that do not move figures. */
    private static void remember(int round, Edition edition) throws IOException, Refusal {
        edition.make((sheet, run) -> {
            for (int k = 0; k < MANY; k++) {
                run.keep(Part.LAYERS, String.class, List.of(round, k), "other");
            }
            return round;
        });
    }
}
