package org.adumbrate.raster.decode.fax;

import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.decode.metadata.TiffFields;
import org.adumbrate.raster.decode.metadata.TiffTag;

/** How a facsimile is packed. */
public enum FaxScheme {
    /** Runs, each row from a byte on (TIFF 6.0, section 10; Compression 2). */
    HUFFMAN,
    /** ITU-T T.4 in one dimension. */
    T4_ONE,
    /** ITU-T T.4 in two dimensions. */
    T4_TWO,
    /** ITU-T T.6. */
    T6;

    /** By Compression and T4Options (TIFF 6.0, section 11). */
    public static FaxScheme of(TiffFields fields) throws InputFault {
        return switch ((int) fields.number(TiffTag.COMPRESSION, 2)) {
            case 2 -> HUFFMAN;
            case 3 -> (fields.number(TiffTag.T4_OPTIONS, 0) & 1) == 1 ? T4_TWO : T4_ONE;
            default -> T6;
        };
    }
}
