package org.adumbrate.linework.cleanup;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.adumbrate.geometry.PathPiece;

/** Chains too short to show that touch nothing. */
final class Fragments {
    /** In mm: an end this near to a line touches it, whatever an exporter's rounding made of it. */
    private static final double TOUCH_MM = 0.05;

    /** How far a curve may lie from the chords that stand for it, in mm. */
    private static final double FLAT_MM = 0.005;

    private final LinePieces pieces;

    /** All pieces that are drawn as straight ones, curves as chords. */
    private final LinePieces flat = new LinePieces();

    /** The number of the chain that each of them belongs to. */
    private final List<Integer> owners = new ArrayList<>();

    private Fragments(LinePieces pieces) {
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
            length += along(chain.entered(n)).reach();
        }
        return length;
    }

    private void flatten(Chain chain, int owner) {
        for (int n = 0; n < chain.size(); n++) {
            along(chain.entered(n)).chords(FLAT_MM, (x0, y0, x1, y1) -> {
                flat.line(x0, y0, x1, y1);
                owners.add(owner);
            });
        }
    }

    /** The piece as it is gone along from an end. */
    private PathPiece along(int end) {
        int other = end ^ 1;
        return pieces.isLine(end >> 1)
                ? PathPiece.line(pieces.x(end), pieces.y(end), pieces.x(other), pieces.y(other))
                : PathPiece.curve(
                        pieces.x(end),
                        pieces.y(end),
                        pieces.towardX(end),
                        pieces.towardY(end),
                        pieces.towardX(other),
                        pieces.towardY(other),
                        pieces.x(other),
                        pieces.y(other));
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
