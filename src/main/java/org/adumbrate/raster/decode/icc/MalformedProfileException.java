package org.adumbrate.raster.decode.icc;

/** A colour profile that cannot be used; the picture is then read as if it had none. */
final class MalformedProfileException extends Exception {
    private static final long serialVersionUID = 1L;

    /** @param why such as {@code "it lacks the tag rTRC"} */
    MalformedProfileException(String why) {
        super(why);
    }

    MalformedProfileException(String why, Throwable cause) {
        super(why, cause);
    }
}
