package org.adumbrate.underlay;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;
import org.adumbrate.raster.OrderedStrips;
import org.adumbrate.raster.encode.StripEncoder;
import org.adumbrate.raster.encode.StripEncoder.Packed;
import org.adumbrate.raster.encode.StripEncoder.Packer;

/** Renders a blend into one or several pictures at once, strip by strip on all cores. */
public final class Underlay {
    private Underlay() {}

    private record Worker(Blend.Blender blender, List<Packer> packers) {}

    /**
     * Renders every strip and appends it to each encoder; finishing and closing them is left to the caller.
     *
     * @param blend what is rendered
     * @param encoders pictures of the blend's canvas and channels, which share its strips
     * @param stripRows rows of a strip
     * @param threads how many threads compute
     * @param progress told the share that is done, 0 to 1, in order
     */
    public static void render(
            Blend blend, List<? extends StripEncoder> encoders, int stripRows, int threads, DoubleConsumer progress)
            throws IOException {
        int height = blend.canvas().height();
        int count = (height + stripRows - 1) / stripRows;
        OrderedStrips.<Worker, List<Packed>>run(
                count,
                threads,
                () -> new Worker(
                        blend.blender(),
                        encoders.stream().map(StripEncoder::packer).toList()),
                (worker, strip) -> compute(worker, strip * stripRows, Math.min(stripRows, height - strip * stripRows)),
                (strip, packed) -> {
                    for (int k = 0; k < packed.size(); k++) {
                        encoders.get(k).append(packed.get(k));
                    }
                    blend.releaseAbove((strip + 1) * stripRows);
                    progress.accept((strip + 1.0) / count);
                });
    }

    private static List<Packed> compute(Worker worker, int y, int rows) throws IOException {
        worker.blender.begin(y, rows);
        for (Packer packer : worker.packers) {
            packer.begin(y, rows);
        }
        for (int row = y; row < y + rows; row++) {
            float[] light = worker.blender.row(row);
            for (Packer packer : worker.packers) {
                packer.row(light);
            }
        }
        List<Packed> packed = new ArrayList<>();
        for (Packer packer : worker.packers) {
            packed.add(packer.pack());
        }
        return packed;
    }
}
