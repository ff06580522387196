package org.adumbrate.golden;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.adumbrate.cli.Cli;
import org.adumbrate.cli.DemoCopy;
import org.adumbrate.drawing.SvgPicture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is drawn, as it should look: each kind of thing on a small sheet, and the demo. */
class GoldenImagesTest {
    /** Lines are anti-aliased by the platform, which may round a level otherwise. */
    private static final GoldenImage.Limits DRAWN = new GoldenImage.Limits(0.05, 0.001, 60);

    /** Nothing but our own arithmetic: the same to a level or two. */
    private static final GoldenImage.Limits COMPUTED = new GoldenImage.Limits(0.02, 0, 2);

    /** Shadows of figures go through sines and roots, which decide here and there for a pixel at a rim. */
    private static final GoldenImage.Limits SHADOW = new GoldenImage.Limits(0.03, 0.0005, 30);

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "pens",
                "pens-fading",
                "cut",
                "cut-crossed",
                "cut-solid",
                "profile",
                "veil",
                "glass",
                "figures",
                "planting",
                "birds"
            })
    void eachKindOfThing(String name) throws IOException {
        Path out = SmallSheets.in(folder).build(name);
        GoldenImage.check(name, out.resolve(name + ".png"), DRAWN);
    }

    /**
     * Alone, crisp at the feet and soft at the head; in the underlay, over the floor, up a wall and into the building's own
     * shadow, where nothing doubles; under the lines, where it meets the feet.
     */
    @Test
    void shadowsOfFigures() throws IOException {
        Path out = SmallSheets.in(folder).build("shadows", "--dpi", "254");
        Rectangle whole = new Rectangle(1200, 720);
        Path alone = GoldenImage.part(out.resolve("figure-shadow.png"), new Rectangle(400, 420, 600, 240), 1);
        Path joined = GoldenImage.part(out.resolve("underlay.png"), whole, 2);
        Path under = GoldenImage.part(out.resolve("shadows.png"), whole, 2);
        GoldenImage.check("figure-shadow", alone, SHADOW);
        GoldenImage.check("figure-shadow-joined", joined, SHADOW);
        GoldenImage.check("figures-with-shadows", under, DRAWN);
    }

    /** Every kind of layer, by way of the SVG with the underlay in it; and what its report constructs. */
    @Test
    void wholeSheetAsSvgAndItsReport() throws IOException {
        Path out = SmallSheets.in(folder).build("whole", "--only", "svg", "--only", "report");
        Path picture = out.resolve("whole.png");
        ImageIO.write(SvgPicture.of(out.resolve("whole.svg")).drawn(5), "png", picture.toFile());
        GoldenImage.check("whole-svg", picture, DRAWN);
        String page = Files.readString(out.resolve("whole.html"));
        // one is written to a hundredth, the other to a tenth
        GoldenText.check("report-perspective.svg", plate(page, "The drawing, pale, with the horizon", 2), 0.011);
        GoldenText.check("report-sun.svg", plate(page, "The sun in plan and in elevation", 11), 0.11);
    }

    /** The SVG with a label, with what it needs to be looked at alone. */
    private static String plate(String page, String label, int letters) {
        Matcher matcher = Pattern.compile("<svg [^>]*aria-label=\"" + label + ".*?</svg>", Pattern.DOTALL)
                .matcher(page);
        assertThat(matcher.find()).as(label).isTrue();
        String style = "<style>line,path,circle{fill:none;stroke:#000;stroke-width:%s}text{font-size:%dpx}"
                        .formatted(letters / 8.0, letters)
                + ".dot,.head{fill:#000}</style>";
        return matcher.group()
                .replaceFirst("<svg ", "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"800\" ")
                .replaceFirst(">", ">\n" + style + "\n")
                .replace("><", ">\n<")
                .concat("\n");
    }

    /** The lines in blue over the pass, and the worst place enlarged. */
    @Test
    void registrationPicture() throws IOException {
        SmallSheets sheets = SmallSheets.in(folder);
        Path picture = folder.resolve("registered.png");
        Cli result = Cli.run(
                "register",
                sheets.file("pavilion.svg").toString(),
                sheets.file("pavilion-shadow.png").toString(),
                "--picture",
                picture.toString());
        assertThat(result.code()).as(result.err()).isZero();
        Path part = GoldenImage.part(picture, new Rectangle(2400, 1440), 4);
        GoldenImage.check("registration", part, DRAWN);
    }

    @Test
    void kilnYardUnderlay() throws IOException {
        Path demo = DemoCopy.kilnYard(folder);
        Path picture = folder.resolve("underlay.png");
        Cli result = Cli.run(
                "merge",
                demo.resolve("lines.pdf").toString(),
                "--shadow",
                demo.resolve("shadow.jpg").toString(),
                "--occlusion",
                demo.resolve("occlusion.png").toString(),
                "--dpi",
                "50",
                "--output",
                picture.toString());
        assertThat(result.code()).as(result.err()).isZero();
        GoldenImage.check("kiln-yard-underlay", picture, COMPUTED);
    }

    @Test
    void kilnYardPreview() throws IOException {
        Path demo = DemoCopy.kilnYard(folder);
        Cli result = Cli.run("build", demo.resolve("kiln-yard.sheet.yaml").toString(), "--only", "preview");
        assertThat(result.code()).as(result.err()).isZero();
        GoldenImage.check("kiln-yard-preview", demo.resolve("out/preview.png"), DRAWN);
    }
}
