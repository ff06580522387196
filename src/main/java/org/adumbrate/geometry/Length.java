package org.adumbrate.geometry;

/**
 * A length on the sheet.
 *
 * @param mm the length in millimetres
 */
public record Length(double mm) implements Comparable<Length> {
    /** Millimetres in an inch, exact since the international inch of 1959. */
    public static final double MM_PER_INCH = 25.4;

    /** Millimetres in a point of PDF: 1/72 inch (ISO 32000-1, 8.3.2.3). */
    public static final double MM_PER_POINT = MM_PER_INCH / 72;

    /** @throws IllegalArgumentException if the length is not a finite number */
    public Length {
        Space.require(Double.isFinite(mm), () -> "a length must be a finite number of millimetres");
    }

    /** A length given in millimetres. */
    public static Length ofMillimetres(double mm) {
        return new Length(mm);
    }

    /** A length given in inches. */
    public static Length ofInches(double inches) {
        return new Length(inches * MM_PER_INCH);
    }

    /** A length given in points of 1/72 inch. */
    public static Length ofPoints(double points) {
        return new Length(points * MM_PER_POINT);
    }

    /** The length in points of 1/72 inch. */
    public double points() {
        return mm / MM_PER_POINT;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(mm, other.mm);
    }
}
