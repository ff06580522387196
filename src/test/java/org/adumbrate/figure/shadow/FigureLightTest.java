package org.adumbrate.figure.shadow;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.figure.depth.DepthScale;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.View;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.StoredNumbers;
import org.adumbrate.raster.decode.RasterFiles;
import org.junit.jupiter.api.Test;

/**
 * A figure whose shadow falls over the ground, up a bench's leg and over the bench, against an excerpt of what an independent
 * ray caster found: 72 x 90 pixels, from column 1954 and row 1266, of a light map and a depth pass of 2550 x 1650 pixels on
 * a sheet of 17 x 11 in, 4 places a pixel with 64 directions each.
 */
class FigureLightTest {
    private static final PixelSize SIZE = new PixelSize(72, 90);
    private static final int LEFT = 1954;
    private static final int TOP = 1266;
    private static final double PIXEL = 431.8 / 2550;

    private static StoredNumbers numbers(String name) throws IOException, URISyntaxException {
        URL resource = FigureLightTest.class.getResource(name);
        try (RasterReader reader = RasterFiles.open(Path.of(resource.toURI()))) {
            return StoredNumbers.read(reader, SIZE.count());
        }
    }

    private static SliceSolid standing() throws IOException {
        try (InputStream in = FigureLightTest.class.getResourceAsStream("standing.txt")) {
            String[] words = new String(in.readAllBytes(), StandardCharsets.US_ASCII)
                    .trim()
                    .split("\\s+");
            VectorPath.Builder<PagePoint> path = VectorPath.in(Space.PAGE);
            path.moveTo(Double.parseDouble(words[0]), Double.parseDouble(words[1]));
            for (int k = 2; k < words.length; k += 2) {
                path.lineTo(Double.parseDouble(words[k]), Double.parseDouble(words[k + 1]));
            }
            path.close();
            return SliceSolid.of(Region.evenOdd(path.build(), 1), 1780, 1.8);
        }
    }

    private static float[] light(Receiver receiver) throws IOException {
        View view = new View(260, new SheetPoint(214, 150.5), 4.25, 0);
        StandingSolid figure = new StandingSolid(new ModelPoint(13.0 - 6.4, 1.2 + 13, 0), 0, false, standing());
        FigureShadow shadow = FigureShadow.of(
                view,
                SunDirection.of(190, 47, 24),
                Canvas.whole(new SheetSize(431.8, 279.4), new PixelSize(2550, 1650)),
                List.of(new Casting(receiver, List.of(figure))));
        float[] light = new float[(int) SIZE.count()];
        shadow.read(LEFT, TOP, SIZE.width(), SIZE.height(), light);
        return light;
    }

    @Test
    void theShadowFallsOverWhatIsSeen() throws IOException, URISyntaxException {
        Affine<org.adumbrate.geometry.RasterPoint, SheetPoint> placement =
                Affine.scalingThenShift(Space.RASTER, Space.SHEET, PIXEL, PIXEL, LEFT * PIXEL, TOP * PIXEL);
        DepthMap depth = DepthMap.of(numbers("depth.png"), new DepthScale(12, 45), placement);
        float[] light = light(new Receiver.Surfaces(depth));
        float[] truth = numbers("figure-light.png").values();
        double off = 0;
        int shaded = 0;
        int both = 0;
        int either = 0;
        for (int k = 0; k < light.length; k++) {
            if (truth[k] < 0.99f) {
                off += Math.abs(light[k] - truth[k]);
                shaded++;
            }
            both += light[k] < 0.5f && truth[k] < 0.5f ? 1 : 0;
            either += light[k] < 0.5f || truth[k] < 0.5f ? 1 : 0;
        }
        assertThat(shaded).isGreaterThan(2000);
        assertThat(off / shaded).isLessThan(0.02);
        assertThat(both / (double) either).isGreaterThan(0.98);
    }

    /** Below the bench, where all that is seen is the ground. */
    @Test
    void onTheFloorAloneItIsTheSameWhereTheFloorIsSeen() throws IOException, URISyntaxException {
        float[] light = light(new Receiver.Floor(0, java.util.Optional.empty()));
        float[] truth = numbers("figure-light.png").values();
        double off = 0;
        int shaded = 0;
        for (int k = 50 * SIZE.width(); k < light.length; k++) {
            if (truth[k] < 0.99f) {
                off += Math.abs(light[k] - truth[k]);
                shaded++;
            }
        }
        assertThat(shaded).isGreaterThan(1000);
        assertThat(off / shaded).isLessThan(0.02);
    }
}
