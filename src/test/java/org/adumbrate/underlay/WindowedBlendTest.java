package org.adumbrate.underlay;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.Tiling;
import org.adumbrate.raster.DecodedRows;
import org.adumbrate.raster.Halt;
import org.adumbrate.raster.LightArray;
import org.adumbrate.raster.MemoryReader;
import org.adumbrate.raster.Orientation;
import org.adumbrate.raster.RowPassage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The law of windows: on the fixed grid of its scale a window is the crop of the whole, byte for byte. */
class WindowedBlendTest {
    private static final SheetSize SHEET = new SheetSize(80, 61);

    /** The 400 x 305 pixels of a pass at this scale are the canvas's own. */
    private static final PixelSize OWN = new PixelSize(400, 305);

    private static DecodedRows noise(PixelSize size, int channels, long seed) throws IOException {
        byte[] values = new byte[Math.toIntExact(size.count() * channels)];
        new Random(seed).nextBytes(values);
        return DecodedRows.whole(
                new MemoryReader(size.width(), size.height(), channels, values, Orientation.TOP_LEFT), 1 << 26);
    }

    private static final RegionMask MASK = new RegionMask(
            List.of(
                    List.of(new SheetPoint(-4, 3), new SheetPoint(71.3, 9.1), new SheetPoint(33.7, 59)),
                    List.of(new SheetPoint(50, 30), new SheetPoint(90, 31), new SheetPoint(60.1, 55))),
            List.of(List.of(
                    new SheetPoint(20, 20),
                    new SheetPoint(40, 20),
                    new SheetPoint(40, 33.3),
                    new SheetPoint(20, 33.3))));

    /** Every way to resample and everything that a look may ask for. */
    private static List<ShownPass> passes(Canvas canvas) throws IOException {
        ToneCurve tone = ToneCurve.through(List.of(new ToneCurve.Point(0.1, 0), new ToneCurve.Point(0.9, 1)));
        Affine<RasterPoint, SheetPoint> turned = new Affine<>(Space.RASTER, Space.SHEET, 0.9, -0.3, 9, 0.3, 0.9, -4);
        Affine<RasterPoint, SheetPoint> within =
                Affine.scalingThenShift(Space.RASTER, Space.SHEET, 0.31, 0.29, 5.05, 3.3);
        Affine<RasterPoint, SheetPoint> onItsHead =
                Affine.scalingThenShift(Space.RASTER, Space.SHEET, 0.071, -0.069, 1.3, 60);
        PixelSize small = new PixelSize(97, 71);
        PixelSize large = new PixelSize(1100, 830);
        return List.of(
                new PlacedPass(PassRole.SHADOW, noise(OWN, 1, 1), SHEET.frame().placing(OWN))
                        .on(canvas)
                        .as(new PassLook(0.7, WhitePoint.ONE, ToneCurve.STRAIGHT, Optional.empty(), Optional.of(MASK))),
                new PlacedPass(
                                PassRole.SHADOW,
                                noise(large, 1, 2),
                                SHEET.frame().placing(large))
                        .on(canvas)
                        .as(PassLook.plain(0.6)),
                new PlacedPass(
                                PassRole.FIGURE_SHADOW,
                                noise(small, 1, 3),
                                SHEET.frame().placing(small))
                        .on(canvas)
                        .as(PassLook.plain(0.6)),
                new PlacedPass(PassRole.OCCLUSION, noise(small, 3, 4), turned)
                        .on(canvas)
                        .as(new PassLook(
                                0.5, new WhitePoint(0.9, 0.95, 0.97), tone, Optional.empty(), Optional.empty())),
                new PlacedPass(PassRole.OCCLUSION, noise(large, 1, 6), onItsHead)
                        .on(canvas)
                        .as(PassLook.plain(0.3)),
                new PlacedPass(PassRole.OCCLUSION, noise(new PixelSize(220, 180), 3, 5), within)
                        .on(canvas)
                        .as(new PassLook(
                                0.4,
                                WhitePoint.ONE,
                                ToneCurve.STRAIGHT,
                                Optional.of(new Srgb(90, 20, 60)),
                                Optional.empty())));
    }

    private static LightArray rendered(Canvas canvas, List<ShownPass> passes, int channels, int stripRows, int threads)
            throws IOException {
        LightArray light = new LightArray(canvas.window(), channels);
        Underlay.render(new Blend(canvas, passes, channels, 0.2), List.of(light), stripRows, threads, share -> {});
        return light;
    }

    @ParameterizedTest
    @CsvSource({"400, 1", "400, 3", "131, 3", "701, 1"})
    void aWindowIsTheCropOfTheWhole(int width, int channels) throws IOException {
        Canvas whole = Canvas.whole(SHEET, SHEET.pixelsAt(width * 25.4 / SHEET.widthMm()));
        LightArray all = rendered(whole, passes(whole), channels, 64, 2);
        int turn = 0;
        for (int side : new int[] {64, 250}) {
            for (PixelBox box : Tiling.of(whole.whole(), side)) {
                Canvas part = whole.window(box);
                turn++;
                LightArray light = rendered(part, passes(part), channels, 1 + turn * 13 % 70, 1 + turn % 4);
                assertThat(light.light()).as("%s", box).isEqualTo(all.crop(box));
            }
        }
        LightArray again = rendered(whole, passes(whole), channels, 7, 3);
        assertThat(again.light()).isEqualTo(all.light());
    }

    @Test
    void aWindowOfARasterThatStreamsReadsWhatItNeedsInOrder() throws IOException {
        PixelSize size = new PixelSize(90, 4000);
        byte[] values = new byte[Math.toIntExact(size.count())];
        new Random(8).nextBytes(values);
        Canvas whole = Canvas.whole(SHEET, new PixelSize(400, 305));
        Canvas part = whole.window(new PixelBox(100, 220, 60, 40));
        List<float[]> both = new ArrayList<>();
        for (Canvas canvas : List.of(whole, part)) {
            var placement = SHEET.frame().placing(size);
            MemoryReader reader = new MemoryReader(size.width(), size.height(), 1, values, Orientation.TOP_LEFT);
            RowPassage passage = RowPassage.of(reader.info(), placement, canvas, 8, 2, values.length);
            assertThat(passage.rows()).isLessThan(1000);
            try (DecodedRows rows = DecodedRows.passing(reader, passage, values.length)) {
                ShownPass pass = new PlacedPass(PassRole.SHADOW, rows, placement)
                        .on(canvas)
                        .as(PassLook.plain(1));
                both.add(rendered(canvas, List.of(pass), 1, 8, 2).crop(part.window()));
            }
        }
        assertThat(both.get(1)).isEqualTo(both.get(0));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 4})
    void heldLightBlendedWithAnyLookIsAsResampledForIt(int threads) throws IOException {
        Canvas canvas = Canvas.whole(SHEET, new PixelSize(333, 254)).window(new PixelBox(40, 30, 280, 200));
        List<ShownPass> direct = passes(canvas);
        List<LaidPass> held = new ArrayList<>();
        for (ShownPass pass : passes(canvas)) {
            held.add(new LaidPass(pass.role(), HeldLight.of(pass.light(), canvas, threads, Halt.NEVER)));
        }
        PixelBox part = new PixelBox(77, 91, 130, 64);
        for (double share : new double[] {1, 0.35, 0}) {
            List<ShownPass> fresh = new ArrayList<>();
            List<ShownPass> again = new ArrayList<>();
            List<ShownPass> inPart = new ArrayList<>();
            for (int k = 0; k < held.size(); k++) {
                PassLook before = direct.get(k).look();
                PassLook look = new PassLook(
                        share * before.opacity(), before.white(), before.tone(), before.tint(), before.mask());
                fresh.add(new ShownPass(direct.get(k).role(), direct.get(k).light(), look));
                again.add(held.get(k).as(look));
                inPart.add(new ShownPass(
                        direct.get(k).role(), ((HeldLight) held.get(k).light()).within(part), look));
            }
            LightArray expected = rendered(canvas, fresh, 3, 64, 1);
            assertThat(rendered(canvas, again, 3, 50, threads).light()).isEqualTo(expected.light());
            assertThat(rendered(canvas.window(part), inPart, 3, 50, threads).light())
                    .isEqualTo(expected.crop(part));
        }
    }
}
