package org.adumbrate.linework.cleanup;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Chains too short to show that touch nothing. */
final class Fragments {
    /** In mm: an end this near to a line touches it, whatever an exporter's rounding made of it. */
    private static final double TOUCH_MM = 0.05;

    private static final int CHORDS = 8;

    private final Pieces pieces;

    /** All pieces that are drawn as straight ones, curves as chords. */
    private final Pieces flat = new Pieces();

    /** The number of the chain that each of them belongs to. */
    private final List<Integer> owners = new ArrayList<>();

    private Fragments(Pieces pieces) {
        this.pieces = pieces;
    }

    /** Takes short free chains out and gives how many. */
    static int drop(Chains chains, CleanUpSettings settings) {
        Fragments fragments = new Fragments(chains.pieces());
        List<Chain> all = chains.all();
        boolean[] isShort = new boolean[all.size()];
        boolean any = false;
        for (int n = 0; n < isShort.length; n++) {
            isShort[n] = fragments.length(all.get(n)) < settings.shortestMm();
            any |= isShort[n];
        }
        if (!any) {
            return 0;
        }
        for (int n = 0; n < isShort.length; n++) {
            fragments.flatten(all.get(n), n);
        }
        SegmentGrid grid = new SegmentGrid(fragments.flat, fragments.flat.lines(), TOUCH_MM);
        List<Chain> kept = IntStream.range(0, isShort.length)
                .filter(n -> !isShort[n] || fragments.touches(all.get(n), n, grid))
                .mapToObj(all::get)
                .toList();
        all.clear();
        all.addAll(kept);
        return isShort.length - kept.size();
    }

    private double length(Chain chain) {
        double length = 0;
        for (int n = 0; n < chain.size(); n++) {
            int end = chain.entered(n);
            int piece = end >> 1;
            length += pieces.isLine(piece)
                    ? pieces.span(piece)
                    : Math.hypot(pieces.towardX(end) - pieces.x(end), pieces.towardY(end) - pieces.y(end))
                            + Math.hypot(
                                    pieces.towardX(end) - pieces.towardX(end ^ 1),
                                    pieces.towardY(end) - pieces.towardY(end ^ 1))
                            + Math.hypot(
                                    pieces.towardX(end ^ 1) - pieces.x(end ^ 1),
                                    pieces.towardY(end ^ 1) - pieces.y(end ^ 1));
        }
        return length;
    }

    private void flatten(Chain chain, int owner) {
        for (int n = 0; n < chain.size(); n++) {
            int end = chain.entered(n);
            double x = pieces.x(end);
            double y = pieces.y(end);
            int chords = pieces.isLine(end >> 1) ? 1 : CHORDS;
            for (int k = 1; k <= chords; k++) {
                double t = (double) k / chords;
                double toX = chords == 1 ? pieces.x(end ^ 1) : onCurve(end, t, true);
                double toY = chords == 1 ? pieces.y(end ^ 1) : onCurve(end, t, false);
                flat.line(x, y, toX, toY);
                owners.add(owner);
                x = toX;
                y = toY;
            }
        }
    }

    private double onCurve(int end, double t, boolean x) {
        double s = 1 - t;
        double p0 = x ? pieces.x(end) : pieces.y(end);
        double p1 = x ? pieces.towardX(end) : pieces.towardY(end);
        double p2 = x ? pieces.towardX(end ^ 1) : pieces.towardY(end ^ 1);
        double p3 = x ? pieces.x(end ^ 1) : pieces.y(end ^ 1);
        return s * s * s * p0 + 3 * s * s * t * p1 + 3 * s * t * t * p2 + t * t * t * p3;
    }

    private boolean touches(Chain chain, int owner, SegmentGrid grid) {
        for (int n = 0; n < chain.size(); n++) {
            int entered = chain.entered(n);
            if (touches(pieces.x(entered), pieces.y(entered), owner, grid)
                    || touches(pieces.x(entered ^ 1), pieces.y(entered ^ 1), owner, grid)) {
                return true;
            }
        }
        return false;
    }

    private boolean touches(double x, double y, int owner, SegmentGrid grid) {
        int near = grid.near(x, y, x, y);
        for (int n = 0; n < near; n++) {
            int k = grid.found(n);
            if (owners.get(k) != owner && distance(x, y, k) <= TOUCH_MM) {
                return true;
            }
        }
        return false;
    }

    private double distance(double x, double y, int k) {
        double ax = flat.x(2 * k);
        double ay = flat.y(2 * k);
        double dx = flat.x(2 * k + 1) - ax;
        double dy = flat.y(2 * k + 1) - ay;
        double square = dx * dx + dy * dy;
        double t = square == 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * dx + (y - ay) * dy) / square));
        return Math.hypot(x - ax - t * dx, y - ay - t * dy);
    }
}
