package org.adumbrate.linework.clip;

import java.util.Arrays;
import java.util.function.IntConsumer;
import java.util.function.IntPredicate;

/** Edges sorted into level bands, so that those at one height are found without looking at all. */
final class EdgeBands {
    private static final int MOST_BANDS = 256;

    /** In how many bands an edge may stand on average: edges from top to bottom would fill every band. */
    private static final int MOST_PLACES = 16;

    private final Effort effort;
    private final double top;
    private final double bandHeight;
    private final int[][] bands;

    /** @param edges x, y of one end and of the other, for each edge */
    EdgeBands(double[] edges, Bounds box, Effort effort) {
        this.effort = effort;
        double height = Math.max(box.bottom() - box.top(), Aperture.TOLERANCE);
        double tall = 0;
        for (int k = 0; k < edges.length; k += 4) {
            tall += Math.abs(edges[k + 3] - edges[k + 1]) / height;
        }
        double most = MOST_PLACES * (edges.length / 4.0) / Math.max(1, tall);
        int count = (int) Math.max(1, Math.min(most, Math.min(MOST_BANDS, edges.length / 32)));
        this.top = box.top();
        this.bandHeight = height / count;
        this.bands = new int[count][];
        int[] sizes = new int[count];
        forEachPlace(edges, (band, edge) -> sizes[band]++);
        Arrays.setAll(bands, band -> new int[sizes[band]]);
        forEachPlace(edges, (band, edge) -> bands[band][--sizes[band]] = edge);
    }

    private interface Place {
        void at(int band, int edge);
    }

    /** Names every band that an edge comes near, for every edge. */
    private void forEachPlace(double[] edges, Place place) {
        for (int k = 0; k < edges.length; k += 4) {
            int last = band(Math.max(edges[k + 1], edges[k + 3]) + Aperture.TOLERANCE);
            for (int b = band(Math.min(edges[k + 1], edges[k + 3]) - Aperture.TOLERANCE); b <= last; b++) {
                place.at(b, k);
            }
        }
    }

    /** Names every edge that comes near the heights between two, some perhaps more than once. */
    void between(double low, double high, IntConsumer edge) {
        int last = band(high);
        for (int b = band(low); b <= last; b++) {
            effort.spend(1 + bands[b].length);
            for (int k : bands[b]) {
                edge.accept(k);
            }
        }
    }

    /** True if an edge that comes near the heights between two passes a test. */
    boolean anyBetween(double low, double high, IntPredicate test) {
        int last = band(high);
        for (int b = band(low); b <= last; b++) {
            effort.spend(1 + bands[b].length);
            for (int k : bands[b]) {
                if (test.test(k)) {
                    return true;
                }
            }
        }
        return false;
    }

    private int band(double y) {
        return (int) Math.max(0, Math.min(bands.length - 1, Math.floor((y - top) / bandHeight)));
    }
}
