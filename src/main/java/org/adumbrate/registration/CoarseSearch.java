package org.adumbrate.registration;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.adumbrate.geometry.SheetSize;

/**
 * Looks for lines in a pass over all scales and shifts at a tiny size: directions of lines and directions of edges, each as
 * a doubled angle, are correlated by Fourier transform (after Kuglin and Hines, IEEE Conf. Cybernetics and Society,
 * 163-165, 1975). Whichever of the two is larger fills most of the grid, so that a placement that shows half of one
 * in all of the other does not wrap around.
 */
final class CoarseSearch {
    private static final int SIDE = 256;

    /** Cells of the longer side of the larger of the two. */
    private static final int LONG_SIDE = 160;

    /** Scales tried, relative to the one at which the long sides agree: from a pass that reaches far beyond the page... */
    private static final double LEAST = 0.42;

    /** ...to a pass that shows a bit more than two fifths of the sheet's side. */
    private static final double MOST = 2.4;

    private static final double STEP = 0.018;

    private final Fft fft = new Fft(SIDE);
    private final Probes probes;
    private final SheetSize sheet;
    private final OrientationField field;
    private final double passLong;
    private final double sheetLong;
    private final float[][] passTransform;
    private final float[][] linesTransform;

    private CoarseSearch(Probes probes, SheetSize sheet, OrientationField field) {
        this.probes = probes;
        this.sheet = sheet;
        this.field = field;
        passLong = Math.max(field.width, field.height);
        sheetLong = Math.max(sheet.widthMm(), sheet.heightMm());
        passTransform = transform(passGrid(LONG_SIDE / passLong));
        linesTransform = transform(linesGrid(LONG_SIDE / sheetLong));
    }

    /** The best candidates, the best first; maps are to the pixels of the field. */
    static List<Candidate> candidates(Probes probes, SheetSize sheet, OrientationField field, int most) {
        CoarseSearch search = new CoarseSearch(probes, sheet, field);
        int steps = (int) (Math.log(MOST / LEAST) / STEP);
        List<Candidate> found = IntStream.rangeClosed(0, steps)
                .parallel()
                .mapToObj(k -> search.atScale(LEAST * Math.exp(k * STEP)))
                .flatMap(List::stream)
                .sorted(Comparator.comparingDouble(Candidate::score).reversed())
                .toList();
        List<Candidate> kept = new ArrayList<>();
        for (Candidate next : found) {
            if (kept.size() < most && kept.stream().noneMatch(k -> search.alike(k, next))) {
                kept.add(next);
            }
        }
        return kept;
    }

    /** True if two maps take the middle of the sheet to about the same place at about the same scale. */
    private boolean alike(Candidate a, Candidate b) {
        double x = sheet.widthMm() / 2;
        double y = sheet.heightMm() / 2;
        double apart = Math.hypot(
                a.map().mapX(x, y) - b.map().mapX(x, y),
                a.map().mapY(x, y) - b.map().mapY(x, y));
        double ratio = Math.abs(Math.log(a.map().xx() / b.map().xx()));
        return apart < 0.02 * passLong && ratio < 3 * STEP;
    }

    /** The two highest peaks at a scale, relative to the one at which the long sides agree. */
    private List<Candidate> atScale(double relative) {
        boolean passLarger = relative <= 1;
        double cellsPerMm = LONG_SIDE / sheetLong * Math.min(1, relative);
        double cellsPerPixel = LONG_SIDE / passLong / Math.max(1, relative);
        float[][] product = transform(passLarger ? linesGrid(cellsPerMm) : passGrid(cellsPerPixel));
        float[][] pass = passLarger ? passTransform : product;
        float[][] lines = passLarger ? product : linesTransform;
        float[][] out = new float[2][SIDE * SIDE];
        for (int k = 0; k < SIDE * SIDE; k++) {
            out[0][k] = pass[0][k] * lines[0][k] + pass[1][k] * lines[1][k];
            out[1][k] = pass[1][k] * lines[0][k] - pass[0][k] * lines[1][k];
        }
        fft.inverse(out[0], out[1]);
        return peaks(out[0], cellsPerMm, cellsPerPixel);
    }

    private List<Candidate> peaks(float[] correlation, double cellsPerMm, double cellsPerPixel) {
        double squares = 0;
        for (float value : correlation) {
            squares += (double) value * value;
        }
        double rms = Math.sqrt(squares / correlation.length) + 1e-30;
        List<Candidate> peaks = new ArrayList<>();
        for (int n = 0; n < 2; n++) {
            int best = 0;
            for (int k = 1; k < correlation.length; k++) {
                best = correlation[k] > correlation[best] ? k : best;
            }
            int px = best % SIDE;
            int py = best / SIDE;
            double u = (px >= SIDE / 2 ? px - SIDE : px) / cellsPerPixel;
            double v = (py >= SIDE / 2 ? py - SIDE : py) / cellsPerPixel;
            double scale = cellsPerMm / cellsPerPixel;
            peaks.add(new Candidate(Lay.scaling(scale, scale, 0, 0, u, v), correlation[best] / rms));
            erase(correlation, px, py);
        }
        return peaks;
    }

    private static void erase(float[] correlation, int px, int py) {
        for (int dy = -4; dy <= 4; dy++) {
            for (int dx = -4; dx <= 4; dx++) {
                correlation[((py + dy) & (SIDE - 1)) * SIDE + ((px + dx) & (SIDE - 1))] = 0;
            }
        }
    }

    /** The directions of the normals of the lines, doubled, in cells. */
    private float[][] linesGrid(double cellsPerMm) {
        float[][] grid = new float[2][SIDE * SIDE];
        for (int k = 0; k < probes.count; k++) {
            double c = probes.dy[k] * probes.dy[k] - probes.dx[k] * probes.dx[k];
            double s = -2 * probes.dx[k] * probes.dy[k];
            splat(grid, probes.x[k] * cellsPerMm, probes.y[k] * cellsPerMm, (float) c, (float) s);
        }
        return level(grid);
    }

    private float[][] passGrid(double cellsPerPixel) {
        float[][] grid = new float[2][SIDE * SIDE];
        for (int y = 0; y < field.height; y++) {
            for (int x = 0; x < field.width; x++) {
                int k = y * field.width + x;
                if (field.re[k] != 0 || field.im[k] != 0) {
                    splat(grid, (x + 0.5) * cellsPerPixel, (y + 0.5) * cellsPerPixel, field.re[k], field.im[k]);
                }
            }
        }
        return level(grid);
    }

    /** Shares a value among the four nearest cells, the grid wrapping around. */
    private static void splat(float[][] grid, double x, double y, float re, float im) {
        int ix = (int) Math.floor(x);
        int iy = (int) Math.floor(y);
        float fx = (float) (x - ix);
        float fy = (float) (y - iy);
        for (int n = 0; n < 4; n++) {
            int at = ((iy + n / 2) & (SIDE - 1)) * SIDE + ((ix + n % 2) & (SIDE - 1));
            float share = (n % 2 == 0 ? 1 - fx : fx) * (n / 2 == 0 ? 1 - fy : fy);
            grid[0][at] += share * re;
            grid[1][at] += share * im;
        }
    }

    /** Takes the square root of the sizes, so that dense detail does not outweigh long lines. */
    private static float[][] level(float[][] grid) {
        for (int k = 0; k < SIDE * SIDE; k++) {
            double size = Math.hypot(grid[0][k], grid[1][k]);
            float scale = size == 0 ? 0 : (float) (1 / Math.sqrt(size));
            grid[0][k] *= scale;
            grid[1][k] *= scale;
        }
        return grid;
    }

    private float[][] transform(float[][] grid) {
        fft.forward(grid[0], grid[1]);
        return grid;
    }
}
