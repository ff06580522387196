package org.adumbrate.linework.cleanup;

import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/** Writes a chain as one run. */
final class ChainPath {
    private final Pieces pieces;
    private final int[] partners;
    private final Chains.Chain chain;
    private final VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);

    ChainPath(Pieces pieces, int[] partners, Chains.Chain chain) {
        this.pieces = pieces;
        this.partners = partners;
        this.chain = chain;
    }

    VectorPath<SheetPoint> path() {
        int[] entered = chain.entered();
        double[] start = place(entered[0]);
        path.moveTo(start[0], start[1]);
        for (int n = 0; n < entered.length; n++) {
            int left = entered[n] ^ 1;
            boolean last = n == entered.length - 1;
            if (pieces.isCurve(left >> 1)) {
                double[] to = last && chain.ring() ? start : place(left);
                path.curveTo(
                        pieces.towardX(entered[n]),
                        pieces.towardY(entered[n]),
                        pieces.towardX(left),
                        pieces.towardY(left),
                        to[0],
                        to[1]);
            } else if (!last || !chain.ring()) {
                double[] to = place(left);
                path.lineTo(to[0], to[1]);
            }
        }
        if (chain.ring()) {
            path.close();
        }
        return path.build();
    }

    /** Where an end is drawn: where it meets its partner, if it has one. */
    private double[] place(int end) {
        int partner = partners[end];
        double[] corner = partner < 0
                ? null
                : Corner.between(pieces, Math.min(end, partner), Math.max(end, partner), Double.MAX_VALUE);
        return corner == null ? new double[] {pieces.x(end), pieces.y(end)} : corner;
    }
}
