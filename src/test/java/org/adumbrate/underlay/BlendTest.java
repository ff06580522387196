package org.adumbrate.underlay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.Frame;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.raster.DecodedRows;
import org.adumbrate.raster.MemoryReader;
import org.adumbrate.raster.Orientation;
import org.junit.jupiter.api.Test;

class BlendTest {
    private static final SheetSize SHEET = new SheetSize(80, 60);
    private static final PixelSize CANVAS = new PixelSize(40, 30);
    private static final Canvas GRID = Canvas.whole(SHEET, CANVAS);

    private static byte[] noise(int count, long seed) {
        byte[] values = new byte[count];
        new Random(seed).nextBytes(values);
        return values;
    }

    private static ShownPass pass(PassRole role, int width, int height, int channels, byte[] values, PassLook look)
            throws IOException {
        DecodedRows rows =
                DecodedRows.whole(new MemoryReader(width, height, channels, values, Orientation.TOP_LEFT), 1 << 20);
        return new PlacedPass(role, rows, SHEET.frame().placing(rows.size()))
                .on(GRID)
                .as(look);
    }

    private static ShownPass flat(PassRole role, int value, PassLook look) throws IOException {
        return pass(role, 1, 1, 1, new byte[] {(byte) value}, look);
    }

    private static float[] blended(List<ShownPass> passes, int channels, double shadowTone, int stripRows)
            throws IOException {
        Blend blend = new Blend(GRID, passes, channels, shadowTone);
        float[] all = new float[CANVAS.width() * CANVAS.height() * channels];
        Blend.Blender blender = blend.blender();
        for (int top = 0; top < CANVAS.height(); top += stripRows) {
            int rows = Math.min(stripRows, CANVAS.height() - top);
            blender.begin(top, rows);
            for (int y = top; y < top + rows; y++) {
                float[] row = blender.row(y);
                System.arraycopy(row, 0, all, y * row.length, row.length);
            }
        }
        return all;
    }

    /** W3C Compositing and Blending Level 1: multiply over an opaque backdrop, in linear light. */
    @Test
    void multiplyHasTheStandardsValues() throws IOException {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(getClass().getResourceAsStream("/org/adumbrate/checkvalues/blend-cases.csv")),
                StandardCharsets.UTF_8))) {
            int checked = 0;
            for (String line : reader.lines().skip(1).toList()) {
                String[] cells = line.split(",");
                double source = Double.parseDouble(cells[1]);
                double alpha = Double.parseDouble(cells[2]);
                double backdrop = Double.parseDouble(cells[3]);
                if (cells[0].equals("multiply") && Double.parseDouble(cells[4]) == 1) {
                    List<ShownPass> passes = List.of(
                            flat(PassRole.OCCLUSION, 255, lightOf(backdrop, 1)),
                            flat(PassRole.SHADOW, 255, lightOf(source, alpha)));
                    double expected = Double.parseDouble(cells[5]);
                    assertThat(blended(passes, 1, 0, 30)[0]).isCloseTo((float) expected, within(2e-6f));
                    checked++;
                }
            }
            assertThat(checked).isGreaterThanOrEqualTo(4);
        }
    }

    /** A white pass bent to a given light. */
    private static PassLook lightOf(double light, double opacity) {
        ToneCurve level = ToneCurve.through(List.of(new ToneCurve.Point(0, light), new ToneCurve.Point(1, light)));
        return new PassLook(opacity, WhitePoint.ONE, level, Optional.empty(), Optional.empty());
    }

    @Property(tries = 50, seed = "1")
    void opacityZeroIsIdentityAndResultsStayWithinBlackAndWhite(
            @ForAll long seed, @ForAll @DoubleRange(min = 0, max = 1) double opacity) throws IOException {
        byte[] values = noise(9 * 7, seed);
        ShownPass under = pass(PassRole.OCCLUSION, 9, 7, 1, values, PassLook.plain(0.8));
        ShownPass none = pass(PassRole.SHADOW, 9, 7, 1, noise(63, seed + 1), PassLook.plain(0));
        ShownPass some = pass(PassRole.SHADOW, 9, 7, 1, noise(63, seed + 1), PassLook.plain(opacity));
        assertThat(blended(List.of(under, none), 1, 0, 30)).isEqualTo(blended(List.of(under), 1, 0, 30));
        for (float light : blended(List.of(under, some), 1, 0, 30)) {
            assertThat(light).isBetween(0f, 1f);
        }
    }

    @Property(tries = 50, seed = "1")
    void theOrderOfPassesDoesNotMatter(@ForAll long seed) throws IOException {
        List<ShownPass> passes = new ArrayList<>(List.of(
                pass(PassRole.OCCLUSION, 9, 7, 1, noise(63, seed), PassLook.plain(0.45)),
                pass(PassRole.SHADOW, 50, 41, 3, noise(50 * 41 * 3, seed + 1), PassLook.plain(0.6)),
                pass(PassRole.FIGURE_SHADOW, 20, 15, 1, noise(300, seed + 2), PassLook.plain(0.6))));
        float[] first = blended(passes, 3, 0.3, 30);
        Collections.shuffle(passes, new Random(seed));
        float[] second = blended(passes, 3, 0.3, 30);
        for (int k = 0; k < first.length; k++) {
            assertThat(second[k]).isCloseTo(first[k], within(1e-6f));
        }
    }

    @Test
    void whiteIsNeutral() throws IOException {
        ShownPass noise = pass(PassRole.SHADOW, 9, 7, 1, noise(63, 4), PassLook.plain(1));
        ShownPass white = flat(PassRole.OCCLUSION, 255, PassLook.plain(1));
        assertThat(blended(List.of(noise, white), 1, 0, 30)).isEqualTo(blended(List.of(noise), 1, 0, 30));
    }

    @Test
    void aFiguresShadowInsideTheBuildingsAddsNothing() throws IOException {
        int tone = 60;
        byte[] building = {(byte) 255, (byte) tone};
        byte[] figure = {0, 0};
        ShownPass shadow = pass(PassRole.SHADOW, 2, 1, 1, building, PassLook.plain(0.7));
        ShownPass figures = pass(PassRole.FIGURE_SHADOW, 2, 1, 1, figure, PassLook.plain(0.7));
        float[] joined = blended(List.of(shadow, figures), 1, tone / 255.0, 30);
        float full = 1 - 0.7f + 0.7f * tone / 255;
        assertThat(joined[0])
                .as("in the sun the figure's shadow has the building's tone")
                .isCloseTo(full, within(1e-6f));
        float[] alone = blended(List.of(shadow), 1, tone / 255.0, 30);
        assertThat(joined[CANVAS.width() - 1])
                .as("in the shade nothing doubles")
                .isEqualTo(alone[CANVAS.width() - 1]);
    }

    @Test
    void theStripNeverShows() throws IOException {
        Affine<RasterPoint, SheetPoint> turned = new Affine<>(Space.RASTER, Space.SHEET, 1.9, -0.6, 9, 0.6, 1.9, -4);
        Affine<RasterPoint, SheetPoint> shrunk = Affine.scalingThenShift(Space.RASTER, Space.SHEET, 0.31, 0.29, 5, 3.3);
        Affine<RasterPoint, SheetPoint> grown = Affine.scalingThenShift(Space.RASTER, Space.SHEET, 3.7, 3.3, -2, 1);
        for (Affine<RasterPoint, SheetPoint> placement : List.of(turned, shrunk, grown)) {
            DecodedRows rows = DecodedRows.whole(
                    new MemoryReader(50, 41, 3, noise(50 * 41 * 3, 9), Orientation.TOP_LEFT), 1 << 20);
            List<ShownPass> passes = List.of(
                    new PlacedPass(PassRole.SHADOW, rows, placement).on(GRID).as(PassLook.plain(0.9)));
            float[] whole = blended(passes, 3, 0, 30);
            for (int stripRows : new int[] {1, 4, 7, 29}) {
                assertThat(blended(passes, 3, 0, stripRows)).isEqualTo(whole);
            }
        }
    }

    /** A flat pass stays flat up to its frame, and bare paper begins right behind it. */
    @Test
    void theFrameHasNoFringe() throws IOException {
        byte[] grey = new byte[64];
        java.util.Arrays.fill(grey, (byte) 51);
        DecodedRows rows = DecodedRows.whole(new MemoryReader(8, 8, 1, grey, Orientation.TOP_LEFT), 1 << 20);
        Frame frame = new Frame(11, 9, 40, 30);
        ShownPass pass = new PlacedPass(PassRole.SHADOW, rows, frame.placing(rows.size()))
                .on(GRID)
                .as(PassLook.plain(1));
        float[] light = blended(List.of(pass), 1, 0, 30);
        int y = 12;
        for (int x = 0; x < CANVAS.width(); x++) {
            double left = 2.0 * x;
            double covered = Math.max(0, Math.min(left + 2, 51) - Math.max(left, 11)) / 2;
            assertThat(light[y * CANVAS.width() + x])
                    .as("pixel " + x)
                    .isCloseTo((float) (1 - covered * (1 - 51 / 255.0)), within(1e-5f));
        }
    }

    @Test
    void aTintIsWhatBlackBecomes() throws IOException {
        PassLook look =
                new PassLook(1, WhitePoint.ONE, ToneCurve.STRAIGHT, Optional.of(new Srgb(255, 0, 0)), Optional.empty());
        float[] light = blended(List.of(flat(PassRole.SHADOW, 0, look)), 3, 0, 30);
        assertThat(light[0]).isEqualTo(1);
        assertThat(light[1]).isZero();
    }

    @Test
    void aMaskKeepsAPassToItsRegionByArea() throws IOException {
        RegionMask mask = new RegionMask(
                List.of(List.of(
                        new SheetPoint(10, 10),
                        new SheetPoint(31, 10),
                        new SheetPoint(31, 50),
                        new SheetPoint(10, 50))),
                List.of(List.of(
                        new SheetPoint(10, 20),
                        new SheetPoint(20, 20),
                        new SheetPoint(20, 30),
                        new SheetPoint(10, 30))));
        PassLook look = new PassLook(1, WhitePoint.ONE, ToneCurve.STRAIGHT, Optional.empty(), Optional.of(mask));
        float[] light = blended(List.of(flat(PassRole.SHADOW, 0, look)), 1, 0, 7);
        int width = CANVAS.width();
        assertThat(light[6 * width + 4]).as("left of it").isEqualTo(1);
        assertThat(light[6 * width + 5]).as("in it").isEqualTo(0);
        assertThat(light[6 * width + 15]).as("half in it").isCloseTo(0.5f, within(1e-6f));
        assertThat(light[12 * width + 7]).as("in the hole").isEqualTo(1);
    }
}
