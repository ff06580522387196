package org.adumbrate.linework.outline;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/** Writes stretches that go on into each other as one path, with no more corners than needed. */
final class MiddlePath {
    /** Corners that lie so near to the line that leaves them out are left out, in mm. */
    private static final double NEEDLESS_MM = 0.001;

    private final MiddleEnds ends;
    private final boolean[] done;
    private final VectorPath.Builder<PagePoint> path = VectorPath.in(Space.PAGE);

    private MiddlePath(MiddleEnds ends, int stretches) {
        this.ends = ends;
        this.done = new boolean[stretches];
    }

    static VectorPath<PagePoint> of(MiddleEnds ends, int stretches) {
        MiddlePath writer = new MiddlePath(ends, stretches);
        for (int end = 0; end < 2 * stretches; end++) {
            if (ends.next(end) < 0 && !writer.done[end >> 1]) {
                writer.run(end, /* ring= */ false);
            }
        }
        for (int k = 0; k < stretches; k++) {
            if (!writer.done[k]) {
                writer.run(2 * k, /* ring= */ true);
            }
        }
        return writer.path.build();
    }

    private void run(int beginning, boolean ring) {
        List<double[]> points = new ArrayList<>();
        points.add(at(beginning));
        int entered = beginning;
        while (entered >= 0 && !done[entered >> 1]) {
            done[entered >> 1] = true;
            points.add(at(entered ^ 1));
            entered = ends.next(entered ^ 1);
        }
        List<double[]> kept = thinned(points);
        path.moveTo(kept.get(0)[0], kept.get(0)[1]);
        for (int k = 1; k < kept.size() - (ring ? 1 : 0); k++) {
            path.lineTo(kept.get(k)[0], kept.get(k)[1]);
        }
        if (ring) {
            path.close();
        }
    }

    private double[] at(int end) {
        return new double[] {ends.x(end), ends.y(end)};
    }

    /** Keeps of what lies between two corners the farthest from the line between them, and so on (Douglas and Peucker, 1973). */
    private static List<double[]> thinned(List<double[]> points) {
        BitSet kept = new BitSet();
        kept.set(0);
        kept.set(points.size() - 1);
        Deque<int[]> open = new ArrayDeque<>(List.of(new int[] {0, points.size() - 1}));
        while (!open.isEmpty()) {
            int[] span = open.pop();
            int farthest = farthest(points, span[0], span[1]);
            if (farthest >= 0) {
                kept.set(farthest);
                open.push(new int[] {span[0], farthest});
                open.push(new int[] {farthest, span[1]});
            }
        }
        return kept.stream().mapToObj(points::get).toList();
    }

    private static int farthest(List<double[]> points, int from, int to) {
        int farthest = -1;
        double most = NEEDLESS_MM;
        for (int k = from + 1; k < to; k++) {
            double off = distance(points.get(k), points.get(from), points.get(to));
            if (off > most) {
                most = off;
                farthest = k;
            }
        }
        return farthest;
    }

    private static double distance(double[] p, double[] a, double[] b) {
        double dx = b[0] - a[0];
        double dy = b[1] - a[1];
        double square = dx * dx + dy * dy;
        double t = square == 0 ? 0 : ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / square;
        double within = Math.max(0, Math.min(1, t));
        return Math.hypot(p[0] - a[0] - within * dx, p[1] - a[1] - within * dy);
    }
}
