package org.adumbrate.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.Tiling;
import org.adumbrate.raster.DecodedRows;
import org.adumbrate.raster.Halt;
import org.adumbrate.raster.LightSink;
import org.adumbrate.raster.MemoryReader;
import org.adumbrate.raster.Orientation;
import org.adumbrate.raster.encode.PixelArray;
import org.adumbrate.underlay.Blend;
import org.adumbrate.underlay.PassLook;
import org.adumbrate.underlay.PassRole;
import org.adumbrate.underlay.PlacedPass;
import org.adumbrate.underlay.ShownPass;
import org.adumbrate.underlay.Underlay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The law of windows for all that is drawn, and for drawings that are held. */
class WindowedDrawingTest {
    private static final SheetSize SHEET = Sketches.SHEET;

    /** Long dashed lines in many directions lie across the sketch, so that tiles cut them everywhere. */
    private static List<Layer> layers() {
        List<Layer> layers = new ArrayList<>(Sketches.everything());
        Pen dashed = new Pen(
                0.25, new Srgb(0, 90, 160), new Dash(List.of(2.3, 0.7, 0.4, 0.7), 0.3), LineCap.ROUND, LineJoin.ROUND);
        Pen chain = new Pen(0.9, new Srgb(120, 60, 0), new Dash(List.of(1.1, 1.9), 0), LineCap.BUTT, LineJoin.MITER);
        for (int k = 0; k < 24; k++) {
            double a = Math.PI * k / 24;
            double dx = 90 * Math.cos(a);
            double dy = 90 * Math.sin(a);
            var line = Sketches.line(50 - dx, 30 - dy, 50 + dx, 30 + dy);
            layers.add(Sketches.lines("ray " + k, k % 2 == 0 ? dashed : chain, List.of(line)));
        }
        return layers;
    }

    private static int[] pixels(PixelArray picture, Canvas canvas, LightSink sink, int stripRows, int threads)
            throws IOException {
        Underlay.render(
                new Blend(canvas, List.of(tones(canvas)), 1, 0), List.of(sink), stripRows, threads, share -> {});
        return picture.pixels();
    }

    /** A pass with tones between levels, so that dithering shows. */
    private static ShownPass tones(Canvas canvas) throws IOException {
        byte[] values = new byte[9 * 7];
        new Random(1).nextBytes(values);
        DecodedRows rows = DecodedRows.whole(new MemoryReader(9, 7, 1, values, Orientation.TOP_LEFT), 1 << 20);
        return new PlacedPass(PassRole.SHADOW, rows, SHEET.frame().placing(rows.size()))
                .on(canvas)
                .as(PassLook.plain(0.5));
    }

    private static int[] drawn(Canvas canvas, int channels, List<Layer> layers, int stripRows, int threads)
            throws IOException {
        PixelArray picture = new PixelArray(canvas.window(), channels);
        return pixels(picture, canvas, new FlatDrawing(canvas, 1, layers, channels, picture), stripRows, threads);
    }

    private static int[] laid(InkedLayers layers) throws IOException {
        PixelArray picture = new PixelArray(layers.canvas().window(), layers.channels());
        return pixels(picture, layers.canvas(), new FlatDrawing(1, layers, picture), 64, 2);
    }

    private static int[] crop(int[] pixels, int width, PixelBox box) {
        int[] crop = new int[Math.toIntExact(box.size().count())];
        for (int y = 0; y < box.height(); y++) {
            System.arraycopy(pixels, (box.top() + y) * width + box.left(), crop, y * box.width(), box.width());
        }
        return crop;
    }

    @ParameterizedTest
    @CsvSource({"377, 3", "901, 1", "1603, 3"})
    void aWindowIsTheCropOfTheWhole(int width, int channels) throws IOException {
        Canvas whole = Canvas.whole(SHEET, new PixelSize(width, width * 5 / 8));
        List<Layer> layers = layers();
        int[] all = drawn(whole, channels, layers, 64, 2);
        assertThat(drawn(whole, channels, layers, 23, 4)).isEqualTo(all);
        int turn = 0;
        for (int side : new int[] {64, 250, 1000}) {
            for (PixelBox box : Tiling.of(whole.whole(), side)) {
                turn++;
                if (side == 1000 || turn % (side == 64 ? 17 : 3) == 1) {
                    Canvas part = whole.window(box);
                    assertThat(drawn(part, channels, layers, 1 + turn * 17 % 90, 1 + turn % 4))
                            .as("%s", box)
                            .isEqualTo(crop(all, width, box));
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 3})
    void heldLayersLaidOverLightAreAsDrawnAtOnce(int channels) throws IOException {
        Canvas canvas = Canvas.whole(SHEET, new PixelSize(1100, 687)).window(new PixelBox(200, 100, 850, 500));
        List<Layer> layers = layers();
        int[] atOnce = drawn(canvas, channels, layers, 64, 2);
        InkedLayers held = InkedLayers.bare(canvas, channels);
        for (Layer layer : layers) {
            held = held.with(List.of(layer), 2);
        }
        assertThat(laid(held)).isEqualTo(atOnce);
        assertThat(laid(InkedLayers.bare(canvas, channels).with(layers, 3))).isEqualTo(atOnce);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 4})
    void anEditedItemIsInkedAgainBetweenWhatLiesBelowAndAbove(int threads) throws IOException {
        Canvas canvas = Canvas.whole(SHEET, new PixelSize(1100, 687)).window(new PixelBox(200, 100, 850, 500));
        List<Layer> layers = layers();
        HeldInk ink = HeldInk.of(canvas, 3, layers, threads, Halt.NEVER);
        assertThat(laid(ink.all())).isEqualTo(drawn(canvas, 3, layers, 64, 2));
        for (int k : new int[] {0, 1, 3, layers.size() - 1, 1}) {
            for (Layer item : List.of(
                    Layer.of("veil", List.of(new Mark.Area(Srgb.WHITE, 0.4, Sketches.disc(70, 20, 6)))),
                    Layer.of("veil", List.of(new Mark.Area(new Srgb(9, 9, 99), 0.7, Sketches.disc(40, 40, 3)))),
                    Layer.of("nothing", List.of()))) {
                List<Layer> edited = new ArrayList<>(layers);
                edited.set(k, item);
                InkedLayers before = ink.all();
                ink = ink.with(edited, threads, Halt.NEVER);
                assertThat(laid(ink.all())).isEqualTo(drawn(canvas, 3, edited, 64, 2));
                changesHoldAllThatDiffers(before, ink.all());
            }
        }
    }

    @Test
    void layersThatChangeTheirOrderPensOrNumberAreInkedAsAtOnce() throws IOException {
        Canvas canvas = Canvas.whole(SHEET, new PixelSize(1100, 687)).window(new PixelBox(200, 100, 850, 500));
        Random random = new Random(7);
        List<Layer> layers = new ArrayList<>(layers());
        HeldInk ink = HeldInk.of(canvas, 3, layers, 2, Halt.NEVER);
        for (int turn = 0; turn < 40; turn++) {
            int k = random.nextInt(layers.size());
            switch (random.nextInt(4)) {
                case 0 -> Collections.swap(layers, k, random.nextInt(layers.size()));
                case 1 -> layers.set(k, wider(layers.get(k), 0.1 + 3 * random.nextDouble()));
                case 2 -> layers.set(k, layers.get(k).hidden());
                default -> layers.set(k, layers().get(random.nextInt(layers().size())));
            }
            InkedLayers before = ink.all();
            ink = ink.with(List.copyOf(layers), 2, Halt.NEVER);
            assertThat(laid(ink.all())).as("turn %d", turn).isEqualTo(drawn(canvas, 3, layers, 64, 2));
            changesHoldAllThatDiffers(before, ink.all());
        }
    }

    private static Layer wider(Layer layer, double widthMm) {
        return new Layer(
                layer.name(),
                layer.within(),
                layer.shown(),
                layer.marks().stream()
                        .map(mark -> mark instanceof Mark.Lines lines
                                ? new Mark.Lines(
                                        new Pen(
                                                widthMm,
                                                lines.pen().ink(),
                                                lines.pen().dash(),
                                                lines.pen().cap(),
                                                lines.pen().join()),
                                        lines.paths())
                                : mark)
                        .toList());
    }

    @Test
    void workThatNobodyWaitsForEnds() {
        Canvas canvas = Canvas.whole(SHEET, new PixelSize(1100, 687));
        assertThatThrownBy(() -> HeldInk.of(canvas, 3, layers(), 2, () -> {
                    throw new InterruptedIOException("enough");
                }))
                .isInstanceOf(InterruptedIOException.class);
    }

    private static void changesHoldAllThatDiffers(InkedLayers before, InkedLayers after) throws IOException {
        PixelBox window = after.canvas().window();
        boolean[] told = new boolean[Math.toIntExact(window.size().count())];
        for (PixelBox box : after.changes(before)) {
            for (int y = box.top(); y < box.bottom(); y++) {
                for (int x = box.left(); x < box.right(); x++) {
                    told[(y - window.top()) * window.width() + x - window.left()] = true;
                }
            }
        }
        int[] one = laid(before);
        int[] other = laid(after);
        for (int k = 0; k < told.length; k++) {
            if (!told[k] && one[k] != other[k]) {
                throw new AssertionError("pixel " + k + " changed untold");
            }
        }
    }
}
