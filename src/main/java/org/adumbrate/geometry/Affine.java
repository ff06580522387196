package org.adumbrate.geometry;

/**
 * An affine map from one plane to another:
 *
 * <pre>
 *   x' = xx·x + xy·y + x0
 *   y' = yx·x + yy·y + y0
 * </pre>
 *
 * Both planes have y down, so a positive determinant keeps the handedness and a positive rotation turns clockwise as seen.
 *
 * @param <A> the points it takes
 * @param <B> the points it gives
 * @param from the space it maps from
 * @param to the space it maps to
 * @param xx change of x' with x
 * @param xy change of x' with y
 * @param x0 x' of the origin
 * @param yx change of y' with x
 * @param yy change of y' with y
 * @param y0 y' of the origin
 */
public record Affine<A extends PlanePoint, B extends PlanePoint>(
        Space<A> from, Space<B> to, double xx, double xy, double x0, double yx, double yy, double y0) {

    /** @throws IllegalArgumentException if a coefficient is not a finite number */
    public Affine {
        Space.require(
                Double.isFinite(xx)
                        && Double.isFinite(xy)
                        && Double.isFinite(x0)
                        && Double.isFinite(yx)
                        && Double.isFinite(yy)
                        && Double.isFinite(y0),
                () -> "an affine map needs finite coefficients");
    }

    /** The map that leaves every coordinate as it is. */
    public static <A extends PlanePoint, B extends PlanePoint> Affine<A, B> identity(Space<A> from, Space<B> to) {
        return scaling(from, to, 1, 1);
    }

    /** Scaling about the origin. */
    public static <A extends PlanePoint, B extends PlanePoint> Affine<A, B> scaling(
            Space<A> from, Space<B> to, double sx, double sy) {
        return scalingThenShift(from, to, sx, sy, 0, 0);
    }

    /** Scaling about the origin, then a shift in the target's unit. */
    public static <A extends PlanePoint, B extends PlanePoint> Affine<A, B> scalingThenShift(
            Space<A> from, Space<B> to, double sx, double sy, double x0, double y0) {
        return new Affine<>(from, to, sx, 0, x0, 0, sy, y0);
    }

    /** The image of a point. */
    public B apply(A p) {
        return at(p.x(), p.y());
    }

    /** The image of the point (x, y) of the source space. */
    public B at(double x, double y) {
        return to.point(mapX(x, y), mapY(x, y));
    }

    /** The x' of (x, y), without making a point. */
    public double mapX(double x, double y) {
        return xx * x + xy * y + x0;
    }

    /** The y' of (x, y), without making a point. */
    public double mapY(double x, double y) {
        return yx * x + yy * y + y0;
    }

    /** This map first, then the next: {@code a.then(b).apply(p) = b.apply(a.apply(p))}. */
    public <C extends PlanePoint> Affine<A, C> then(Affine<B, C> next) {
        return new Affine<>(
                from,
                next.to,
                next.xx * xx + next.xy * yx,
                next.xx * xy + next.xy * yy,
                next.xx * x0 + next.xy * y0 + next.x0,
                next.yx * xx + next.yy * yx,
                next.yx * xy + next.yy * yy,
                next.yx * x0 + next.yy * y0 + next.y0);
    }

    /** Signed growth of areas; negative when the map mirrors. */
    public double determinant() {
        return xx * yy - xy * yx;
    }

    /**
     * The map back.
     *
     * @throws IllegalArgumentException if the map flattens the plane and so has no inverse
     */
    public Affine<B, A> inverse() {
        double det = determinant();
        double size = Math.max(Math.abs(xx) + Math.abs(xy), Math.abs(yx) + Math.abs(yy));
        Space.require(Math.abs(det) > 1e-12 * size * size, () -> "the map " + this + " flattens the plane");
        return new Affine<>(
                to,
                from,
                yy / det,
                -xy / det,
                (xy * y0 - yy * x0) / det,
                -yx / det,
                xx / det,
                (yx * x0 - xx * y0) / det);
    }

    /** True when the axes keep their directions: scaling and shift only, without turning, shearing or mirroring. */
    public boolean isUpright() {
        return xy == 0 && yx == 0 && xx > 0 && yy > 0;
    }

    /** The mean growth of lengths: the square root of the growth of areas. */
    public double meanScale() {
        return Math.sqrt(Math.abs(determinant()));
    }
}
