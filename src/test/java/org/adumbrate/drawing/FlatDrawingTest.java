package org.adumbrate.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Srgb;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FlatDrawingTest {
    private static final SheetSize SHEET = new SheetSize(100, 60);
    private static final Srgb RED = new Srgb(255, 0, 0);
    private static final Srgb BLUE = new Srgb(0, 0, 255);

    /** One pixel to the millimetre. */
    private static final PixelSize SIZE = new PixelSize(100, 60);

    @Test
    void theOrderIsThatOfTheLayers() throws IOException {
        Layer red = Sketches.lines("red", Pen.round(10, RED), List.of(Sketches.line(0, 30, 100, 30)));
        Layer blue = Sketches.lines("blue", Pen.round(10, BLUE), List.of(Sketches.line(50, 0, 50, 60)));
        assertThat(pixel(Flat.image(SHEET, SIZE, List.of(red, blue)), 50, 30)).isEqualTo(BLUE.rgb());
        assertThat(pixel(Flat.image(SHEET, SIZE, List.of(blue, red)), 50, 30)).isEqualTo(RED.rgb());
    }

    @Test
    void widthsAreTrueDownToAHairlineThatCanStillBeSeen() throws IOException {
        // one pixel to the millimetre, so that the ink in a column is the width in mm
        assertThat(ink(3)).isCloseTo(3, within(0.05));
        assertThat(ink(0.7)).isCloseTo(0.7, within(0.05));
        assertThat(ink(0.13)).isCloseTo(0.5, within(0.05));
    }

    /** How much ink a level line of a width leaves in one column of pixels: 1 for a black pixel. */
    private static double ink(double widthMm) throws IOException {
        Layer line = Sketches.lines("line", Pen.round(widthMm, Srgb.BLACK), List.of(Sketches.line(0, 30.5, 100, 30.5)));
        BufferedImage image = Flat.image(SHEET, SIZE, List.of(line));
        double ink = 0;
        for (int y = 0; y < SIZE.height(); y++) {
            ink += 1 - (image.getRGB(50, y) & 0xff) / 255.0;
        }
        return ink;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 7, 63, 64, 65, 500})
    void theStripNeverShows(int stripRows) throws IOException {
        PixelSize size = new PixelSize(813, 508);
        for (int channels : new int[] {1, 3}) {
            BufferedImage whole = Flat.image(Sketches.SHEET, size, channels, Sketches.everything(), 200, size.height());
            BufferedImage stripped = Flat.image(Sketches.SHEET, size, channels, Sketches.everything(), 200, stripRows);
            assertThat(Flat.mostDifference(whole, stripped)).isZero();
        }
    }

    /** Against the whole drawn at one go by Java2D: bands may differ from it by a rounding, and nowhere by more. */
    @Test
    void bandsLeaveNoTraceWhereTheyMeet() throws IOException {
        PixelSize size = new PixelSize(1626, 1016);
        List<Layer> layers = Sketches.everything();
        BufferedImage whole = new BufferedImage(size.width(), size.height(), BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = whole.createGraphics();
        graphics.fillRect(0, 0, size.width(), size.height());
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        double scale = size.width() / Sketches.SHEET.widthMm();
        graphics.scale(scale, size.height() / Sketches.SHEET.heightMm());
        layers.stream()
                .filter(Layer::shown)
                .flatMap(layer -> Paint.of(layer).stream())
                .map(paint -> new Brush(paint, paint.color(), scale))
                .forEach(brush -> {
                    brush.dip(graphics);
                    for (int shape = 0; shape < brush.reaches().size(); shape++) {
                        brush.draw(graphics, shape);
                    }
                });
        graphics.dispose();
        BufferedImage banded = Flat.image(Sketches.SHEET, size, layers);
        assertThat(Flat.meanDifference(whole, banded)).isLessThan(0.02);
        assertThat(Flat.mostDifference(whole, banded)).isLessThan(8);
    }

    @Test
    void aLayerThatIsSwitchedOffLeavesNoTrace() throws IOException {
        List<Layer> shown = Sketches.everything().stream().filter(Layer::shown).toList();
        PixelSize size = new PixelSize(203, 127);
        assertThat(Flat.mostDifference(
                        Flat.image(Sketches.SHEET, size, shown),
                        Flat.image(Sketches.SHEET, size, Sketches.everything())))
                .isZero();
    }

    /** Source over in encoded values (W3C Compositing and Blending Level 1): 0.4 of 255 and 0.6 of 128 are 178.8. */
    @Test
    void whatIsTranslucentIsMixedAsItIsEncoded() throws IOException {
        Layer veil = Layer.of("veil", List.of(new Mark.Area(Srgb.WHITE, 0.4, Sketches.rectangle(10, 10, 90, 50))));
        for (int channels : new int[] {1, 3}) {
            BufferedImage image = Flat.image(SHEET, SIZE, channels, List.of(veil), 128, 60);
            assertThat(image.getRGB(50, 30) & 0xff).isBetween(178, 180);
            assertThat(pixel(image, 5, 30)).isEqualTo(0x808080);
        }
    }

    @Test
    void areasThatLookAlikeMeetWithoutASeamAndCoverOnceWhereTheyOverlap() throws IOException {
        Region<SheetPoint> left = Sketches.rectangle(10, 10, 50.5, 50);
        Region<SheetPoint> right = Sketches.rectangle(50.5, 10, 80, 50);
        Region<SheetPoint> over = Sketches.rectangle(70, 20, 90, 40).minus(Sketches.rectangle(72, 25, 88, 35));
        Layer veil = Layer.of(
                "veil",
                List.of(
                        new Mark.Area(BLUE, 0.5, left),
                        new Mark.Area(BLUE, 0.5, right),
                        new Mark.Area(BLUE, 0.5, over)));
        BufferedImage image = Flat.image(SHEET, SIZE, List.of(veil));
        int[] row = image.getRGB(10, 30, 70, 1, null, 0, 70);
        assertThat(row).containsOnly(row[0]);
        assertThat(pixel(image, 84, 30)).isEqualTo(0xffffff);
        assertThat(image.getRGB(75, 22)).isEqualTo(row[0]);
        assertThat(image.getRGB(85, 22)).isEqualTo(row[0]);
    }

    @Test
    void inksAreExact() throws IOException {
        Srgb ink = new Srgb(64, 64, 64);
        Layer area = Layer.of("area", List.of(new Mark.Area(ink, 1, Sketches.rectangle(-1, -1, 101, 61))));
        for (int channels : new int[] {1, 3}) {
            BufferedImage image = Flat.image(SHEET, SIZE, channels, List.of(area), 200, 60);
            assertThat(image.getRGB(0, 0, 100, 60, null, 0, 100)).containsOnly(0xff404040);
        }
    }

    /** Luminance by Rec. ITU-R BT.709: red has 0.2126 of the light, which is encoded 127.1. */
    @Test
    void onAGreyPictureColoursHaveTheirLuminance() throws IOException {
        Layer area = Layer.of("area", List.of(new Mark.Area(RED, 1, Sketches.rectangle(10, 10, 90, 50))));
        BufferedImage image = Flat.image(SHEET, SIZE, 1, List.of(area), 255, 60);
        assertThat(pixel(image, 50, 30)).isEqualTo(0x7f7f7f);
    }

    @Test
    void aPictureIsGreyWhereAllThatShowsIs() {
        Layer black = Sketches.lines("black", Pen.round(1, Srgb.BLACK), List.of(Sketches.line(0, 0, 9, 9)));
        Layer red = Layer.of("red", List.of(new Mark.Area(RED, 0.5, Sketches.rectangle(10, 10, 90, 50))));
        assertThat(FlatDrawing.channels(1, List.of(black))).isEqualTo(1);
        assertThat(FlatDrawing.channels(1, List.of(black, red.hidden()))).isEqualTo(1);
        assertThat(FlatDrawing.channels(1, List.of(black, red))).isEqualTo(3);
        assertThat(FlatDrawing.channels(3, List.of(black))).isEqualTo(3);
    }

    private static int pixel(BufferedImage image, int x, int y) {
        return image.getRGB(x, y) & 0xffffff;
    }
}
