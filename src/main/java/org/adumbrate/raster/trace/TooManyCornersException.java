package org.adumbrate.raster.trace;

/** Pixels that have more corners than any drawn region; they are noise. */
public final class TooManyCornersException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** @param most how many there may be */
    TooManyCornersException(int most) {
        super("has more than " + most + " corners, as noise has and no drawn region");
    }
}
