package org.adumbrate.linework.cleanup;

import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/** Writes a chain as one run. */
final class ChainPath {
    private final LinePieces pieces;
    private final int[] partners;
    private final Chain chain;
    private final VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);

    ChainPath(LinePieces pieces, int[] partners, Chain chain) {
        this.pieces = pieces;
        this.partners = partners;
        this.chain = chain;
    }

    VectorPath<SheetPoint> path() {
        Corner start = place(chain.entered(0));
        path.moveTo(start.x(), start.y());
        for (int n = 0; n < chain.size(); n++) {
            int entered = chain.entered(n);
            int left = entered ^ 1;
            boolean last = n == chain.size() - 1;
            if (pieces.isCurve(left >> 1)) {
                Corner to = last && chain.isRing() ? start : place(left);
                path.curveTo(
                        pieces.towardX(entered),
                        pieces.towardY(entered),
                        pieces.towardX(left),
                        pieces.towardY(left),
                        to.x(),
                        to.y());
            } else if (!last || !chain.isRing()) {
                Corner to = place(left);
                path.lineTo(to.x(), to.y());
            }
        }
        if (chain.isRing()) {
            path.close();
        }
        return path.build();
    }

    /** Where an end is drawn: where it meets its partner, if it has one. */
    private Corner place(int end) {
        int partner = partners[end];
        Optional<Corner> corner = partner < 0
                ? Optional.empty()
                : Corner.between(pieces, Math.min(end, partner), Math.max(end, partner), Double.MAX_VALUE);
        return corner.orElseGet(() -> new Corner(pieces.x(end), pieces.y(end)));
    }
}
