package org.adumbrate.raster.decode.metadata;

import java.util.OptionalDouble;

/** Stated resolutions, brought to dots per inch. */
public final class Resolution {
    /** Metres in an inch. */
    public static final double INCH_M = 0.0254;

    /** Centimetres in an inch. */
    public static final double INCH_CM = 2.54;

    private static final double SAME = 0.01;

    private Resolution() {}

    /**
     * Dots per inch, unless the two directions differ by more than a hundredth or say nothing.
     *
     * @param x dots a unit across
     * @param y dots a unit down
     * @param unitsPerInch how many such units an inch has
     */
    public static OptionalDouble dpi(double x, double y, double unitsPerInch) {
        boolean stated = x > 0 && Double.isFinite(x) && Math.abs(x - y) <= SAME * x;
        return stated ? OptionalDouble.of(x * unitsPerInch) : OptionalDouble.empty();
    }
}
