package org.adumbrate.raster.decode.metadata;

import java.io.IOException;
import java.util.OptionalDouble;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.Orientation;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * What the first directory of a TIFF, or of an Exif block (JEITA CP-3451), says of how a picture is to be shown.
 *
 * @param orientation how to turn it
 * @param dpi its resolution, if stated
 */
public record ExifBlock(Orientation orientation, OptionalDouble dpi) {
    /** No block. */
    public static final ExifBlock NONE = new ExifBlock(Orientation.TOP_LEFT, OptionalDouble.empty());

    private static final int NO_UNIT = 1;
    private static final int INCH = 2;
    private static final int CENTIMETRE = 3;

    /**
     * Reads a block from its byte-order mark on. One that makes no sense says nothing: it would be wrong to refuse a picture
     * for it.
     */
    public static ExifBlock read(SourceFile file, byte[] block) throws IOException {
        try {
            return of(TiffFields.read(file, block));
        } catch (InputFault e) {
            return NONE;
        }
    }

    /** Reads what the fields of a directory say. */
    public static ExifBlock of(TiffFields fields) throws InputFault {
        int unit = (int) fields.number(TiffTag.RESOLUTION_UNIT, INCH);
        double unitsPerInch = unit == CENTIMETRE ? Resolution.INCH_CM : 1;
        OptionalDouble dpi = unit == NO_UNIT
                ? OptionalDouble.empty()
                : Resolution.dpi(
                        fields.fraction(TiffTag.X_RESOLUTION), fields.fraction(TiffTag.Y_RESOLUTION), unitsPerInch);
        return new ExifBlock(Orientation.ofExif((int) fields.number(TiffTag.ORIENTATION, 1)), dpi);
    }
}
