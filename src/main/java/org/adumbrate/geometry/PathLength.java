package org.adumbrate.geometry;

/** Adds up the length of the pieces it visits; curves by adaptive halving. */
final class PathLength implements PieceVisitor {
    /** A curve is as long as its control polygon and its chord say, once the two differ by less than this share. */
    private static final double TOLERANCE = 1e-6;

    private double length;

    double length() {
        return length;
    }

    @Override
    public void piece(PathPiece piece) {
        length += piece.straight()
                ? piece.reach()
                : curve(
                        piece.x0(),
                        piece.y0(),
                        piece.x1(),
                        piece.y1(),
                        piece.x2(),
                        piece.y2(),
                        piece.x3(),
                        piece.y3(),
                        24);
    }

    /** Gravesen, "Adaptive subdivision and the length of Bezier curves" (1997): (2·chord + 2·polygon) / 4 for a cubic. */
    private static double curve(
            double ax, double ay, double bx, double by, double cx, double cy, double dx, double dy, int depth) {
        double chord = Math.hypot(dx - ax, dy - ay);
        double polygon = Math.hypot(bx - ax, by - ay) + Math.hypot(cx - bx, cy - by) + Math.hypot(dx - cx, dy - cy);
        if (depth == 0 || polygon - chord <= TOLERANCE * polygon) {
            return (chord + polygon) / 2;
        }
        double abx = (ax + bx) / 2;
        double aby = (ay + by) / 2;
        double bcx = (bx + cx) / 2;
        double bcy = (by + cy) / 2;
        double cdx = (cx + dx) / 2;
        double cdy = (cy + dy) / 2;
        double abcx = (abx + bcx) / 2;
        double abcy = (aby + bcy) / 2;
        double bcdx = (bcx + cdx) / 2;
        double bcdy = (bcy + cdy) / 2;
        double mx = (abcx + bcdx) / 2;
        double my = (abcy + bcdy) / 2;
        return curve(ax, ay, abx, aby, abcx, abcy, mx, my, depth - 1)
                + curve(mx, my, bcdx, bcdy, cdx, cdy, dx, dy, depth - 1);
    }
}
