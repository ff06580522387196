package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.decode.RasterFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A part of the sheet, delivered alone. */
class BuildWindowTest {
    @TempDir
    private Path folder;

    /** The demo with two more pictures to deliver. */
    private Path yard(String flat) throws IOException {
        Path yard = DemoCopy.kilnYard(folder);
        Path file = yard.resolve("kiln-yard.sheet.yaml");
        Files.writeString(file, Files.readString(file).replace("deliver:", "deliver:\n  flat: " + flat));
        return yard;
    }

    private static Cli build(Path yard, String... more) {
        List<String> args = new ArrayList<>(
                List.of("build", yard.resolve("kiln-yard.sheet.yaml").toString()));
        args.addAll(List.of(more));
        return Cli.run(args.toArray(String[]::new));
    }

    private static void assertCrop(Path part, Path whole, int left, int top) throws IOException {
        BufferedImage crop = ImageIO.read(part.toFile());
        BufferedImage all = ImageIO.read(whole.toFile());
        int bands = all.getRaster().getNumBands();
        assertThat(crop.getRaster().getNumBands()).isEqualTo(bands);
        int[] expected = all.getRaster().getPixels(left, top, crop.getWidth(), crop.getHeight(), (int[]) null);
        assertThat(crop.getRaster().getPixels(0, 0, crop.getWidth(), crop.getHeight(), (int[]) null))
                .isEqualTo(expected);
    }

    /** 50 dpi are 850 x 550 px, and 254 mm are 500 px. */
    @Test
    void aWindowIsTheCropOfTheWholeAndLeavesTheWholeAlone() throws IOException {
        Path yard = yard("out/flat.tif");
        Path out = yard.resolve("out");
        assertThat(build(yard, "--only", "flat,preview", "--dpi", "50").code()).isZero();
        byte[] before = Files.readAllBytes(out.resolve("flat.tif"));

        Cli part = build(yard, "--only", "flat,preview", "--dpi", "50", "--window", "254,177.8,50.8,25.4");
        assertThat(part.code()).as(part.err()).isZero();
        assertThat(part.out())
                .contains(out.resolve("flat-window.tif") + ": flat-window, 100 x 50 px at 50 dpi")
                .contains(out.resolve("preview-window.png") + ": preview-window, 100 x 50 px at 50 dpi");
        assertThat(out.resolve("flat.tif")).hasBinaryContent(before);
        assertCrop(out.resolve("flat-window.tif"), out.resolve("flat.tif"), 500, 350);
        // a PNG has whole pixels to the metre
        for (String name : List.of("flat-window.tif", "preview-window.png")) {
            try (RasterReader reader = RasterFiles.open(out.resolve(name))) {
                assertThat(reader.info().dpi().orElseThrow()).isCloseTo(50, within(0.013));
            }
        }

        assertThat(build(yard, "--only", "preview", "--window", "0,0,100,279.4").code())
                .isZero();
        assertCrop(out.resolve("preview-window.png"), out.resolve("preview.png"), 0, 0);
    }

    @Test
    void whatLiesBesideTheSheetIsCutAwayAndTold() throws IOException {
        Path yard = yard("out/flat.png");
        Cli plan = build(yard, "--only", "flat", "--dpi", "50", "--window", "406.4,254,254,254", "--dry-run");
        assertThat(plan.out()).contains("flat-window.png: flat-window, 50 x 50 px at 50 dpi, new");
        Cli part = build(yard, "--only", "flat", "--dpi", "50", "--window", "406.4,254,254,254");
        assertThat(part.code()).as(part.err()).isZero();
        assertThat(part.out()).contains("flat-window, 50 x 50 px");
        assertThat(part.err()).contains("reaches beyond the sheet, which is 431.8 x 279.4 mm");
    }

    @Test
    void whatCannotBeAPartOfTheSheetIsRefusedAndWritesNothing() throws IOException {
        Path yard = yard("out/flat.png");
        for (String dry : List.of("--quiet", "--dry-run")) {
            Cli off = build(yard, "--only", "flat", "--window", "440,10,20,20", dry);
            assertThat(off.code()).isEqualTo(ExitCode.REFUSED);
            assertThat(off.err()).contains("nothing of it lies on the sheet", "440,10 to 460,30 mm");
            Cli others = build(yard, "--only", "flat,underlay", "--window", "40,10,20,20", dry);
            assertThat(others.code()).isEqualTo(ExitCode.REFUSED);
            assertThat(others.err()).contains("only preview and flat");
        }
        assertThat(build(yard, "--window", "40,10,20,20").code()).isEqualTo(ExitCode.USAGE);
        for (String wrong : List.of("40,10,20", "40,10,-20,20", "a,b,c,d", "0,0,0,0")) {
            Cli said = build(yard, "--only", "flat", "--window", wrong);
            assertThat(said.code()).isEqualTo(ExitCode.USAGE);
            assertThat(said.err()).contains("left, top, width and height in mm");
        }
        assertThat(yard.resolve("out/flat-window.png")).doesNotExist();
        assertThat(yard.resolve("out/underlay.tif")).doesNotExist();
    }

    @Test
    void aWindowIsNeverWrittenOverAnotherItem() throws IOException {
        Path yard = DemoCopy.kilnYard(folder);
        Path file = yard.resolve("kiln-yard.sheet.yaml");
        Files.writeString(file, Files.readString(file).replace("deliver:", "deliver:\n  flat: out/preview-window.png"));
        Cli said = build(yard, "--only", "preview", "--window", "40,10,20,20");
        assertThat(said.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(said.err()).contains("preview-window.png");
    }
}
