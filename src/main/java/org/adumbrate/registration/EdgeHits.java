package org.adumbrate.registration;

import java.util.BitSet;
import java.util.stream.IntStream;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;

/**
 * What a pass shows at the probes of a placement: for each probe with an edge near it, where that edge is, measured across
 * the line.
 */
final class EdgeHits {
    /** Profiles beside each other along the line that are averaged, at distances of one pixel. */
    private static final int BESIDE = 4;

    /** Room that a profile needs before the next line, in pixels. */
    private static final double ROOM = 2.2;

    /** An edge must explain this share of what the profile shows. */
    private static final double EXPLAINED = 0.8;

    /** An edge must be this many times as strong as the noise. */
    private static final double OVER_NOISE = 4;

    /** Edges that a piece of line needs to be judged by them... */
    private static final int EDGES_OF_A_PIECE = 3;

    /** ...and the share of them that must lie on it. */
    private static final double MOST_OF_A_PIECE = 0.7;

    private final Probes probes;
    /** Probes looked at: inside the pass, with room beside them. */
    final int looked;

    final int count;
    /** Number of the probe of each hit. */
    final int[] probe;
    /** Where the line is expected, in pixels of the level. */
    final double[] u;

    final double[] v;
    /** Unit normal of the line there. */
    final double[] nx;

    final double[] ny;
    /** How far along the normal the edge was found, and the standard deviation of that, in pixels of the level. */
    final double[] offset;

    final double[] sigma;

    private EdgeHits(Probes probes, int looked, int count) {
        this.probes = probes;
        this.looked = looked;
        this.count = count;
        probe = new int[count];
        u = new double[count];
        v = new double[count];
        nx = new double[count];
        ny = new double[count];
        offset = new double[count];
        sigma = new double[count];
    }

    /** Looks at every {@code stride}-th probe. */
    static EdgeHits find(
            Probes probes, PassLevel level, EdgeModel model, Affine<SheetPoint, RasterPoint> map, int stride) {
        int chunks = 8;
        int total = (probes.count + stride - 1) / stride;
        EdgeHits[] parts = new EdgeHits[chunks];
        IntStream.range(0, chunks).parallel().forEach(c -> {
            Look look = new Look(probes, level, model, map);
            parts[c] = look.over(total * c / chunks, total * (c + 1) / chunks, stride);
        });
        return joined(parts);
    }

    /** The number of the piece of line that hit k lies on; hits of one piece follow one another. */
    int piece(int k) {
        return probes.piece[probe[k]];
    }

    /**
     * The pieces of line that the pass shows, by number: along them edges are found, and most lie on the line. The others are not
     * seen in the pass, or the placement is wrong.
     */
    BitSet piecesSeen() {
        BitSet seen = new BitSet();
        int start = 0;
        while (start < count) {
            int end = start;
            int on = 0;
            while (end < count && piece(end) == piece(start)) {
                on += Math.abs(offset[end]) < Agreement.ON_LINE ? 1 : 0;
                end++;
            }
            if (end - start >= EDGES_OF_A_PIECE && on > MOST_OF_A_PIECE * (end - start)) {
                seen.set(piece(start));
            }
            start = end;
        }
        return seen;
    }

    private static EdgeHits joined(EdgeHits... parts) {
        int count = 0;
        int looked = 0;
        for (EdgeHits part : parts) {
            count += part.count;
            looked += part.looked;
        }
        EdgeHits all = new EdgeHits(parts[0].probes, looked, count);
        int at = 0;
        for (EdgeHits part : parts) {
            for (int k = 0; k < part.count; k++) {
                all.set(
                        at++,
                        part.probe[k],
                        part.u[k],
                        part.v[k],
                        part.nx[k],
                        part.ny[k],
                        part.offset[k],
                        part.sigma[k]);
            }
        }
        return all;
    }

    private void set(int at, int k, double pu, double pv, double normalX, double normalY, double off, double sd) {
        probe[at] = k;
        u[at] = pu;
        v[at] = pv;
        nx[at] = normalX;
        ny[at] = normalY;
        offset[at] = off;
        sigma[at] = sd;
    }

    /** Looks at probes one after another. */
    private static final class Look {
        private final Probes probes;
        private final PassLevel level;
        private final EdgeModel model;
        private final Affine<SheetPoint, RasterPoint> map;
        private final double[] profile = new double[EdgeModel.SAMPLES];
        private final EdgeModel.Edge edge = new EdgeModel.Edge();

        Look(Probes probes, PassLevel level, EdgeModel model, Affine<SheetPoint, RasterPoint> map) {
            this.probes = probes;
            this.level = level;
            this.model = model;
            this.map = map;
        }

        EdgeHits over(int from, int to, int stride) {
            EdgeHits room = new EdgeHits(probes, 0, to - from);
            int count = 0;
            int looked = 0;
            for (int n = from; n < to; n++) {
                int k = n * stride;
                double du = map.xx() * probes.dx[k] + map.xy() * probes.dy[k];
                double dv = map.yx() * probes.dx[k] + map.yy() * probes.dy[k];
                double perMm = Math.hypot(du, dv);
                double u = map.mapX(probes.x[k], probes.y[k]);
                double v = map.mapY(probes.x[k], probes.y[k]);
                if (Math.min(probes.roomLeft[k], probes.roomRight[k]) * perMm < ROOM
                        || !read(u, v, du / perMm, dv / perMm, probes.behind[k] * perMm, probes.ahead[k] * perMm)) {
                    continue;
                }
                looked++;
                model.fit(profile, level.noise(), edge);
                if (edge.explained > EXPLAINED
                        && edge.contrast > OVER_NOISE * level.noise()
                        && edge.sigma < Double.POSITIVE_INFINITY) {
                    room.set(count++, k, u, v, -dv / perMm, du / perMm, edge.offset, edge.sigma);
                }
            }
            EdgeHits hits = new EdgeHits(probes, looked, count);
            for (int k = 0; k < count; k++) {
                hits.set(k, room.probe[k], room.u[k], room.v[k], room.nx[k], room.ny[k], room.offset[k], room.sigma[k]);
            }
            return hits;
        }

        /** Reads the mean profile across a line; false if it would leave the picture or the line is too short. */
        private boolean read(double u, double v, double du, double dv, double behind, double ahead) {
            int first = -(int) Math.min(BESIDE, behind);
            int last = (int) Math.min(BESIDE, ahead);
            double reachX = Math.abs(dv) * EdgeModel.REACH + Math.abs(du) * BESIDE + 1;
            double reachY = Math.abs(du) * EdgeModel.REACH + Math.abs(dv) * BESIDE + 1;
            PixelRect inside = level.inside();
            if (last - first < 1
                    || u - reachX < inside.left()
                    || u + reachX > inside.right()
                    || v - reachY < inside.top()
                    || v + reachY > inside.bottom()) {
                return false;
            }
            double share = 1.0 / (last - first + 1);
            for (int k = 0; k < EdgeModel.SAMPLES; k++) {
                double x = u - dv * EdgeModel.position(k);
                double y = v + du * EdgeModel.position(k);
                double sum = 0;
                for (int j = first; j <= last; j++) {
                    sum += level.image().at(x + j * du, y + j * dv);
                }
                profile[k] = sum * share;
            }
            return true;
        }
    }
}
