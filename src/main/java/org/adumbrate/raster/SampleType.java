package org.adumbrate.raster;

/** How a file's samples are kept until they are turned into light. */
public enum SampleType {
    /** Unsigned, 8 bits or fewer, scaled to 0 to 255. */
    BYTE(1),
    /** Unsigned, 9 to 16 bits, scaled to 0 to 65535. */
    SHORT(2),
    /** Floating point, unscaled. */
    FLOAT(4);

    private final int bytes;

    SampleType(int bytes) {
        this.bytes = bytes;
    }

    /** The memory that one sample takes. */
    public int bytes() {
        return bytes;
    }
}
