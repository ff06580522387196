package org.adumbrate.raster.decode.metadata;

/** Numbers of the TIFF fields used here (TIFF 6.0; supplement 1995 and 2002; technical note 3 for SampleFormat). */
public final class TiffTag {
    public static final int WIDTH = 256;
    public static final int HEIGHT = 257;
    public static final int BITS_PER_SAMPLE = 258;
    public static final int COMPRESSION = 259;
    public static final int PHOTOMETRIC = 262;
    public static final int FILL_ORDER = 266;
    public static final int STRIP_OFFSETS = 273;
    static final int ORIENTATION = 274;
    public static final int SAMPLES_PER_PIXEL = 277;
    public static final int ROWS_PER_STRIP = 278;
    public static final int STRIP_BYTE_COUNTS = 279;
    static final int X_RESOLUTION = 282;
    static final int Y_RESOLUTION = 283;
    public static final int PLANAR_CONFIGURATION = 284;
    public static final int T4_OPTIONS = 292;
    public static final int T6_OPTIONS = 293;
    static final int RESOLUTION_UNIT = 296;
    public static final int PREDICTOR = 317;
    public static final int COLOR_MAP = 320;
    public static final int TILE_WIDTH = 322;
    public static final int TILE_HEIGHT = 323;
    public static final int TILE_OFFSETS = 324;
    public static final int TILE_BYTE_COUNTS = 325;
    public static final int INK_SET = 332;
    public static final int EXTRA_SAMPLES = 338;
    public static final int SAMPLE_FORMAT = 339;
    public static final int JPEG_TABLES = 347;
    public static final int ICC_PROFILE = 34675;

    private TiffTag() {}

    /** Whether a number is one of these. */
    static boolean concernsThePicture(int tag) {
        return switch (tag) {
            case WIDTH,
                    HEIGHT,
                    BITS_PER_SAMPLE,
                    COMPRESSION,
                    PHOTOMETRIC,
                    FILL_ORDER,
                    STRIP_OFFSETS,
                    ORIENTATION,
                    SAMPLES_PER_PIXEL,
                    ROWS_PER_STRIP,
                    STRIP_BYTE_COUNTS,
                    X_RESOLUTION,
                    Y_RESOLUTION,
                    PLANAR_CONFIGURATION,
                    T4_OPTIONS,
                    T6_OPTIONS,
                    RESOLUTION_UNIT,
                    PREDICTOR,
                    COLOR_MAP,
                    TILE_WIDTH,
                    TILE_HEIGHT,
                    TILE_OFFSETS,
                    TILE_BYTE_COUNTS,
                    INK_SET,
                    EXTRA_SAMPLES,
                    SAMPLE_FORMAT,
                    JPEG_TABLES,
                    ICC_PROFILE -> true;
            default -> false;
        };
    }
}
