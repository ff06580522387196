package org.adumbrate.underlay;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleConsumer;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.raster.LightSink;
import org.adumbrate.raster.LightSink.Filler;
import org.adumbrate.raster.LightSink.Strip;
import org.adumbrate.raster.OrderedStrips;

/** Renders a blend into one or several sinks at once, strip by strip on all cores. */
public final class Underlay {
    private Underlay() {}

    private record Worker(Blend.Blender blender, List<Filler> fillers) {}

    /**
     * Renders every strip and gives it to each sink; finishing and closing them is left to the caller.
     *
     * @param blend what is rendered
     * @param sinks take the window of the blend's canvas with its channels, and share its strips
     * @param stripRows rows of a strip
     * @param threads how many threads compute
     * @param progress told the share that is done, 0 to 1, in order
     */
    public static void render(
            Blend blend, List<? extends LightSink> sinks, int stripRows, int threads, DoubleConsumer progress)
            throws IOException {
        PixelBox window = blend.canvas().window();
        int start =
                sinks.stream().anyMatch(LightSink::wantsEvenStrips) ? window.top() : aligned(window.top(), stripRows);
        int count = (window.bottom() - start + stripRows - 1) / stripRows;
        blend.releaseAbove(window.top());
        OrderedStrips.<Worker, List<Strip>>run(
                count,
                threads,
                () -> new Worker(
                        blend.blender(), sinks.stream().map(LightSink::filler).toList()),
                (worker, strip) -> {
                    int top = Math.max(window.top(), start + strip * stripRows);
                    int bottom = Math.min(window.bottom(), start + (strip + 1) * stripRows);
                    return compute(worker, top, bottom - top);
                },
                (strip, filled) -> {
                    for (int k = 0; k < filled.size(); k++) {
                        sinks.get(k).take(filled.get(k));
                    }
                    blend.releaseAbove(start + (strip + 1) * stripRows);
                    progress.accept((strip + 1.0) / count);
                });
    }

    /** Strips that begin where the whole sheet's do share its tiles, so that none is drawn for two strips. */
    private static int aligned(int top, int stripRows) {
        return top / stripRows * stripRows;
    }

    private static List<Strip> compute(Worker worker, int y, int rows) throws IOException {
        worker.blender.begin(y, rows);
        for (Filler filler : worker.fillers) {
            filler.begin(y, rows);
        }
        for (int row = y; row < y + rows; row++) {
            float[] light = worker.blender.row(row);
            for (Filler filler : worker.fillers) {
                filler.row(light);
            }
        }
        List<Strip> filled = new ArrayList<>();
        for (Filler filler : worker.fillers) {
            filled.add(filler.end());
        }
        return filled;
    }
}
