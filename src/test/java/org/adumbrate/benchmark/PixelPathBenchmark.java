package org.adumbrate.benchmark;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.raster.DecodedRows;
import org.adumbrate.raster.LightSink;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.decode.RasterFiles;
import org.adumbrate.raster.encode.FlateRowsEncoder;
import org.adumbrate.raster.encode.PictureFormat;
import org.adumbrate.underlay.Blend;
import org.adumbrate.underlay.PassLook;
import org.adumbrate.underlay.PassRole;
import org.adumbrate.underlay.PlacedPass;
import org.adumbrate.underlay.ShownPass;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/**
 * What a pixel costs on one thread: decoding per pixel of the pass; resampling with blending, and encoding, per pixel of
 * the canvas. The passes are the demo's.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class PixelPathBenchmark {
    private static final SheetSize SHEET = new SheetSize(431.8, 279.4);
    private static final int STRIP = 64;
    private static final int WIDTH = 5100;
    private static final int SHADOW_PIXELS = 3400 * 2200;
    private static final int OCCLUSION_PIXELS = 2550 * 1650;
    private static final Path SHADOW = Path.of("passes", "kiln-yard", "shadow.jpg");
    private static final Path OCCLUSION = Path.of("passes", "kiln-yard", "occlusion.png");

    /** Deflate level of the encoding. */
    @Param({"1", "6"})
    public int level;

    private DecodedRows shadow;
    private DecodedRows occlusion;
    private Blend.Blender blender;
    private LightSink.Filler packer;
    private float[][] strip;

    /** Decodes the passes and blends the strip that is encoded. */
    @Setup(Level.Trial)
    public void prepare() throws IOException {
        shadow = DecodedRows.whole(RasterFiles.open(SHADOW), Long.MAX_VALUE);
        occlusion = DecodedRows.whole(RasterFiles.open(OCCLUSION), Long.MAX_VALUE);
        PixelSize canvas = new PixelSize(WIDTH, 3300);
        Canvas grid = Canvas.whole(SHEET, canvas);
        List<ShownPass> passes = List.of(
                new PlacedPass(PassRole.SHADOW, shadow, SHEET.frame().placing(shadow.size()))
                        .on(grid)
                        .as(PassLook.plain(0.6)),
                new PlacedPass(PassRole.OCCLUSION, occlusion, SHEET.frame().placing(occlusion.size()))
                        .on(grid)
                        .as(PassLook.plain(0.45)));
        blender = new Blend(grid, passes, 3, 0).blender();
        PictureFormat format = new PictureFormat(canvas, 3, 8, 300, level, true);
        packer = new FlateRowsEncoder(format, OutputStream.nullOutputStream()).filler();
        strip = new float[STRIP][];
        blender.begin(1600, STRIP);
        for (int k = 0; k < STRIP; k++) {
            strip[k] = blender.row(1600 + k).clone();
        }
    }

    /** Closes the passes. */
    @TearDown(Level.Trial)
    public void close() throws IOException {
        shadow.close();
        occlusion.close();
    }

    /** A colour JPEG, to stored samples. */
    @Benchmark
    @OperationsPerInvocation(SHADOW_PIXELS)
    public long decodeJpeg() throws IOException {
        return decode(SHADOW);
    }

    /** A grey PNG, to stored samples. */
    @Benchmark
    @OperationsPerInvocation(OCCLUSION_PIXELS)
    public long decodePng() throws IOException {
        return decode(OCCLUSION);
    }

    private static long decode(Path file) throws IOException {
        long[] rows = {0};
        try (RasterReader reader = RasterFiles.open(file)) {
            reader.decode((x, y, pixels, samples, offset) -> rows[0] += pixels);
        }
        return rows[0];
    }

    /** Samples to light, both passes resampled and blended. */
    @Benchmark
    @OperationsPerInvocation(STRIP * WIDTH)
    public float resampleAndBlend() throws IOException {
        float sum = 0;
        blender.begin(1600, STRIP);
        for (int k = 0; k < STRIP; k++) {
            sum += blender.row(1600 + k)[k];
        }
        return sum;
    }

    /** Light to dithered 8-bit samples, filtered and deflated. */
    @Benchmark
    @OperationsPerInvocation(STRIP * WIDTH)
    public LightSink.Strip encode() {
        packer.begin(1600, STRIP);
        for (float[] row : strip) {
            packer.row(row);
        }
        return packer.end();
    }
}
