package org.adumbrate.underlay;

import java.io.IOException;
import java.util.OptionalDouble;
import org.adumbrate.raster.LightRows;
import org.adumbrate.raster.Luminance;

/**
 * The two tones that a pass is measured by: its lit white, and how dark its full shadow is.
 *
 * @param white the light of its lit white
 * @param whiteFound whether that white stands out; if not, {@code white} is the file's own
 * @param grey whether every pixel is known to be a grey, however many channels the file has
 * @param shadow the light of its commonest dark tone as a share of its white, 0 to 1; absent if it has none
 */
public record PassTones(WhitePoint white, boolean whiteFound, boolean grey, OptionalDouble shadow) {
    /** A tone must hold this share of the picture within {@link #REACH} steps of it to count. */
    private static final double NOTABLE = 0.01;

    /** A white darker than this is a tone of the picture, not its paper: encoded 128 of 255. */
    private static final int DARKEST_WHITE = 128;

    /** Where the weakest channel has less than this share of the strongest, the tone is a colour and no paper under any sun. */
    private static final double LEAST_OF_WHITE = 0.1;

    private static final int REACH = 2;

    /** A shadow must be darker than this share of the white, in linear light. */
    private static final double SHADOW_BELOW = 0.85;

    /** Measures a pass; reads it from top to bottom once. */
    public static PassTones measure(LightRows rows) throws IOException {
        return of(HistogramOfLight.of(rows));
    }

    /**
     * The white is the brightest tone that a notable share of the picture has: paper, sky and sunlit faces of a render
     * all have it. Within its neighbourhood the commonest step is taken, so that the noise of a compression does not
     * darken it.
     */
    static PassTones of(HistogramOfLight tones) {
        long enough = Math.max(1, Math.round(NOTABLE * tones.total()));
        int white = HistogramOfLight.STEPS - 1;
        while (white >= DARKEST_WHITE && tones.count(white - REACH, white + REACH) < enough) {
            white--;
        }
        if (white < DARKEST_WHITE) {
            return new PassTones(WhitePoint.ONE, false, tones.isGrey(), shadow(tones, 1, enough));
        }
        int peak = peak(tones, white - 2 * REACH, white + REACH);
        double red = tones.mean(0, peak - 1, peak + 1);
        double green = tones.mean(1, peak - 1, peak + 1);
        double blue = tones.mean(2, peak - 1, peak + 1);
        double strongest = Math.max(red, Math.max(green, blue));
        if (Math.min(red, Math.min(green, blue)) <= LEAST_OF_WHITE * strongest) {
            return new PassTones(WhitePoint.ONE, false, tones.isGrey(), shadow(tones, 1, enough));
        }
        WhitePoint point = new WhitePoint(red, green, blue);
        if (peak >= HistogramOfLight.STEPS - 2) {
            point = WhitePoint.ONE;
        }
        return new PassTones(point, true, tones.isGrey(), shadow(tones, point.luminance(), enough));
    }

    private static int peak(HistogramOfLight tones, int from, int to) {
        int best = from;
        for (int k = from; k <= to; k++) {
            if (tones.count(k, k) > tones.count(best, best)) {
                best = k;
            }
        }
        return best;
    }

    private static OptionalDouble shadow(HistogramOfLight tones, double white, long enough) {
        int limit = ToneSteps.of((float) (SHADOW_BELOW * white));
        int best = -1;
        for (int k = 0; k < limit; k++) {
            long here = tones.count(k - REACH, k + REACH);
            if (here >= enough && (best < 0 || here > tones.count(best - REACH, best + REACH))) {
                best = k;
            }
        }
        if (best < 0) {
            return OptionalDouble.empty();
        }
        double light = Luminance.RED * tones.mean(0, best - REACH, best + REACH)
                + Luminance.GREEN * tones.mean(1, best - REACH, best + REACH)
                + Luminance.BLUE * tones.mean(2, best - REACH, best + REACH);
        return OptionalDouble.of(Math.min(1, light / white));
    }
}
