package org.adumbrate.raster.decode.light;

/** How coverage is stored with a pixel. */
public enum Alpha {
    /** Not at all: every pixel is opaque. */
    NONE,
    /** As a last channel, the colour being that of the covered part. */
    STRAIGHT,
    /** As a last channel, the encoded colour having been multiplied by it. */
    ASSOCIATED;

    /** The channels it takes. */
    public int channels() {
        return this == NONE ? 0 : 1;
    }
}
