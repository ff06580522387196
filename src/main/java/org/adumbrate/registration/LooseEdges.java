package org.adumbrate.registration;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.StraightEdge;
import org.adumbrate.raster.trace.Contours;
import org.adumbrate.raster.trace.StraightStretches;

/**
 * The straight edges between light and dark in a placed pass that no line of the sheet explains: in a shadow pass, where shadows
 * end on what is drawn as one face.
 */
public final class LooseEdges {
    /** Standard deviation of the blur that joins a rim's stairs and noise to a line, in pixels. */
    private static final double BLUR = 0.8;

    /** Noise above this, in tone, is blurred more. */
    private static final double NOISY = 0.012;

    private static final double MORE_BLUR = 1.4;

    /** How far a rim may lie from a straight line, in pixels. */
    private static final double STRAIGHT = 0.7;

    /** Shorter edges tell too little of their direction, in pixels. */
    private static final double SHORTEST = 12;

    /** Corners round off so much of an edge, in pixels. */
    private static final double ROUNDED = 2;

    /** An edge is no better known than this, in pixels: renders are sampled. */
    private static final double LEAST_ERROR = 0.15;

    /** An edge lies on a line that is as near as this, in pixels, and a little for the line itself, in mm... */
    private static final double NEAR_PX = 2;

    private static final double NEAR_MM = 0.1;

    /** ...and runs along it to the sine of this angle. */
    private static final double ALONG = 0.2;

    /** An edge is a line's if so much of it lies on lines. */
    private static final double EXPLAINED = 0.4;

    private static final double STEP = 4;

    /** Light and dark lie at least so far apart, in tone. */
    private static final float LEAST_STEP = 0.08f;

    private static final int BINS = 256;

    private final double[] pieces;
    private final PieceGrid grid;
    private final Affine<RasterPoint, SheetPoint> toSheet;
    private final double mmPerPixel;
    private final double near;
    private final List<StraightEdge> edges = new ArrayList<>();

    private LooseEdges(LinePattern lines, Affine<RasterPoint, SheetPoint> toSheet) {
        this.pieces = lines.pieces();
        this.toSheet = toSheet;
        this.mmPerPixel = toSheet.meanScale();
        this.near = NEAR_MM + NEAR_PX * mmPerPixel;
        this.grid = new PieceGrid(pieces, Math.max(1, near));
    }

    /**
     * Finds the edges.
     *
     * @param passToSheet where the pass lies, by its pixels in the file
     * @return the edges; empty if the pass has no two tones
     */
    public static List<StraightEdge> of(
            PassImage pass, Affine<RasterPoint, SheetPoint> passToSheet, LinePattern lines) {
        ToneImage tone = ToneImage.of(pass);
        Optional<Float> level = between(tone);
        if (level.isEmpty()) {
            return List.of();
        }
        double noise = PassLevel.of(tone, new PixelRect(0, 0, tone.width, tone.height), 1)
                .noise();
        float[] smooth = blurred(tone, noise > NOISY ? MORE_BLUR : BLUR);
        Affine<RasterPoint, SheetPoint> toSheet = Affine.scaling(
                        passToSheet.from(), passToSheet.from(), tone.reduction, tone.reduction)
                .then(passToSheet);
        LooseEdges found = new LooseEdges(lines, toSheet);
        for (double[] rim : Contours.of(smooth, tone.width, tone.height, level.get())) {
            StraightStretches.of(rim, STRAIGHT, SHORTEST, ROUNDED).forEach(found::add);
        }
        return found.edges;
    }

    /** The tone halfway between light and dark, parted where both differ most (Otsu, IEEE Transactions SMC 9, 1979). */
    private static Optional<Float> between(ToneImage tone) {
        long[] counts = new long[BINS];
        for (float value : tone.tone) {
            counts[(int) (Math.min(1, value) * (BINS - 1))]++;
        }
        double sum = 0;
        for (int k = 0; k < BINS; k++) {
            sum += (double) k * counts[k];
        }
        double below = 0;
        long count = 0;
        double most = 0;
        double level = 0;
        double step = 0;
        for (int k = 0; k < BINS - 1; k++) {
            count += counts[k];
            below += (double) k * counts[k];
            long rest = tone.tone.length - count;
            if (count > 0 && rest > 0) {
                double dark = below / count;
                double light = (sum - below) / rest;
                double parted = (double) count * rest * (light - dark) * (light - dark);
                if (parted > most) {
                    most = parted;
                    level = (light + dark) / 2;
                    step = light - dark;
                }
            }
        }
        return step / (BINS - 1) < LEAST_STEP ? Optional.empty() : Optional.of((float) (level / (BINS - 1)));
    }

    private static float[] blurred(ToneImage image, double sigma) {
        int reach = (int) Math.ceil(3 * sigma);
        float[] weights = new float[2 * reach + 1];
        float all = 0;
        for (int k = -reach; k <= reach; k++) {
            weights[k + reach] = (float) Math.exp(-k * k / (2 * sigma * sigma));
            all += weights[k + reach];
        }
        for (int k = 0; k < weights.length; k++) {
            weights[k] /= all;
        }
        int w = image.width;
        int h = image.height;
        float[] across = new float[w * h];
        float[] down = new float[w * h];
        IntStream.range(0, h).parallel().forEach(y -> {
            for (int x = 0; x < w; x++) {
                float sum = 0;
                for (int k = -reach; k <= reach; k++) {
                    sum += weights[k + reach] * image.tone[y * w + Math.max(0, Math.min(w - 1, x + k))];
                }
                across[y * w + x] = sum;
            }
        });
        IntStream.range(0, h).parallel().forEach(y -> {
            for (int k = -reach; k <= reach; k++) {
                int row = Math.max(0, Math.min(h - 1, y + k)) * w;
                for (int x = 0; x < w; x++) {
                    down[y * w + x] += weights[k + reach] * across[row + x];
                }
            }
        });
        return down;
    }

    private void add(StraightStretches.Stretch stretch) {
        SheetPoint from = toSheet.at(stretch.x0(), stretch.y0());
        SheetPoint to = toSheet.at(stretch.x1(), stretch.y1());
        double length = from.distanceTo(to);
        if (!(length > 0)) {
            return;
        }
        double dx = (to.x() - from.x()) / length;
        double dy = (to.y() - from.y()) / length;
        int steps = Math.max(3, (int) (length / mmPerPixel / STEP));
        int explained = 0;
        for (int k = 0; k < steps; k++) {
            double along = length * k / (steps - 1);
            explained += isOnLine(from.x() + along * dx, from.y() + along * dy, dx, dy) ? 1 : 0;
        }
        if (explained < EXPLAINED * steps) {
            edges.add(new StraightEdge(from, to, Math.max(stretch.rms(), LEAST_ERROR) * mmPerPixel));
        }
    }

    private boolean isOnLine(double x, double y, double dx, double dy) {
        boolean[] isOn = {false};
        grid.near(x - near, y - near, x + near, y + near, s -> {
            double ex = pieces[s + 2] - pieces[s];
            double ey = pieces[s + 3] - pieces[s + 1];
            double length = Math.hypot(ex, ey);
            if (length > 0 && Math.abs(ex * dy - ey * dx) < ALONG * length) {
                double along = ((x - pieces[s]) * ex + (y - pieces[s + 1]) * ey) / length;
                double t = Math.max(0, Math.min(length, along)) / length;
                isOn[0] |= Math.hypot(x - pieces[s] - t * ex, y - pieces[s + 1] - t * ey) < near;
            }
        });
        return isOn[0];
    }
}
