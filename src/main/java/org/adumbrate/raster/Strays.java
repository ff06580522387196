package org.adumbrate.raster;

import java.nio.file.Path;
import java.util.Optional;
import org.adumbrate.fault.InputFault;

/** Counts the numbers of a floating-point raster that cannot be light. */
final class Strays {
    private long unlit;
    private String firstUnlit = "";
    private long negative;
    private String firstNegative = "";

    /** Looks at a piece of a row, its place being that in the stored raster. */
    synchronized void take(int x, int y, float[] values, int from, int pixels, int channels) {
        for (int i = 0; i < pixels * channels; i++) {
            float value = values[from + i];
            if (value >= 0 && value <= Float.MAX_VALUE) {
                continue;
            }
            String place = "column " + (x + i / channels) + " of row " + y;
            if (Float.isFinite(value)) {
                firstNegative = negative++ == 0 ? place : firstNegative;
            } else {
                firstUnlit = unlit++ == 0 ? place : firstUnlit;
            }
        }
    }

    /** @throws InputFault if any were infinite, or no numbers */
    synchronized void refuse(Path file) throws InputFault {
        if (unlit > 0) {
            throw new InputFault(
                    file,
                    "holds " + unlit + (unlit == 1 ? " value that is" : " values that are")
                            + " no light (infinite, or not a number), the first in " + firstUnlit,
                    "render it again, or save it as 16 bit PNG or TIFF");
        }
    }

    /** What to tell of negative ones; they are darker than black, which filters of renderers make at edges. */
    synchronized Optional<String> note() {
        return negative == 0
                ? Optional.empty()
                : Optional.of("holds " + negative + (negative == 1 ? " negative value" : " negative values")
                        + ", which print as black, the first in " + firstNegative);
    }
}
