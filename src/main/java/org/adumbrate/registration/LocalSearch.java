package org.adumbrate.registration;

import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;

/**
 * Climbs from a rough placement to the best one near it: shift, scale and stretch are varied in turn by ever smaller steps
 * while the directions of lines and edges agree better. Nothing is differentiated, so a flat or jagged score does no harm.
 */
final class LocalSearch {
    /** Every so many probes are looked at. */
    private static final int STRIDE = 6;

    private final Probes probes;
    private final OrientationField field;
    /** Half the size of the pass, in pixels of the field: a relative change of scale moves its rim by so much. */
    private final double halfWidth;

    private final double halfHeight;

    LocalSearch(Probes probes, OrientationField field) {
        this.probes = probes;
        this.field = field;
        halfWidth = field.width / 2.0;
        halfHeight = field.height / 2.0;
    }

    /**
     * The best placement near the start.
     *
     * @param step first step, in pixels of the field at the rim of the pass
     * @param least last step
     */
    Candidate climb(Candidate start, double step, double least) {
        Affine<SheetPoint, RasterPoint> map = start.map();
        double score = score(map);
        for (double d = step; d >= least; d /= 2) {
            boolean better = true;
            for (int turn = 0; better && turn < 12; turn++) {
                better = false;
                for (int way = 0; way < 8; way++) {
                    Affine<SheetPoint, RasterPoint> next = varied(map, way / 2, way % 2 == 0 ? d : -d);
                    double nextScore = score(next);
                    if (nextScore > score) {
                        map = next;
                        score = nextScore;
                        better = true;
                    }
                }
            }
        }
        return new Candidate(map, score);
    }

    /** The map with one of shift x, shift y, scale, stretch changed so that the rim of the pass moves by d pixels. */
    private Affine<SheetPoint, RasterPoint> varied(Affine<SheetPoint, RasterPoint> map, int what, double d) {
        double shiftX = what == 0 ? d : 0;
        double shiftY = what == 1 ? d : 0;
        double growX = what >= 2 ? 1 + d / halfWidth : 1;
        double growY = what == 2 ? 1 + d / halfWidth : what == 3 ? 1 - d / halfHeight : 1;
        return map.then(Affine.scalingThenShift(
                Space.RASTER,
                Space.RASTER,
                growX,
                growY,
                halfWidth * (1 - growX) + shiftX,
                halfHeight * (1 - growY) + shiftY));
    }

    /** How well directions agree, summed over the probes inside and divided by the root of their number. */
    double score(Affine<SheetPoint, RasterPoint> map) {
        double sum = 0;
        int inside = 0;
        for (int k = 0; k < probes.count; k += STRIDE) {
            int u = (int) Math.floor(map.mapX(probes.x[k], probes.y[k]));
            int v = (int) Math.floor(map.mapY(probes.x[k], probes.y[k]));
            if (u >= 0 && v >= 0 && u < field.width && v < field.height) {
                double c = probes.dy[k] * probes.dy[k] - probes.dx[k] * probes.dx[k];
                double s = -2 * probes.dx[k] * probes.dy[k];
                int at = v * field.width + u;
                sum += field.re[at] * c + field.im[at] * s;
                inside++;
            }
        }
        return sum / Math.sqrt(inside + 20.0);
    }
}
