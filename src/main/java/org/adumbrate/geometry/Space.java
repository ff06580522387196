package org.adumbrate.geometry;

import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * A plane that points live in, as a value: it makes points of its own type, so that a map can be typed by its two ends.
 *
 * @param <P> the type of this space's points
 */
public final class Space<P extends PlanePoint> {
    /** The drawing at its printed size, in mm. */
    public static final Space<SheetPoint> SHEET = new Space<>("sheet", "mm", SheetPoint::new);

    /** The page of a vector file, in mm. */
    public static final Space<PagePoint> PAGE = new Space<>("page", "mm", PagePoint::new);

    /** A raster, in continuous pixels. */
    public static final Space<RasterPoint> RASTER = new Space<>("raster", "px", RasterPoint::new);

    private interface Maker<P> {
        P make(double x, double y);
    }

    private final String name;
    private final String unit;
    private final Maker<P> maker;

    private Space(String name, String unit, Maker<P> maker) {
        this.name = name;
        this.unit = unit;
        this.maker = maker;
    }

    /**
     * The space of a name that {@link #toString} gave.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Space<?> named(String name) {
        return Stream.of(SHEET, PAGE, RASTER)
                .filter(space -> space.name.equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no space is called " + name));
    }

    /** Makes a point of this space. */
    public P point(double x, double y) {
        return maker.make(x, y);
    }

    /** The unit of this space's coordinates, for messages: {@code mm} or {@code px}. */
    public String unit() {
        return unit;
    }

    @Override
    public String toString() {
        return name;
    }

    /** Fails with the given complaint unless the condition holds. */
    static void require(boolean condition, Supplier<String> complaint) {
        if (!condition) {
            throw new IllegalArgumentException(complaint.get());
        }
    }
}
