package org.adumbrate.raster.decode.jpeg;

import java.nio.ByteBuffer;
import java.util.OptionalDouble;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.decode.icc.EmbeddedProfile;
import org.adumbrate.raster.decode.metadata.ExifBlock;

/**
 * What stands in a JPEG before its first scan (ISO/IEC 10918-1, annex B; ISO/IEC 10918-5 for JFIF).
 *
 * @param frame its frame header
 * @param size its size
 * @param colour how its components are to be understood
 * @param interleaved whether its first scan holds all components
 * @param inverted whether its inks are stored as 255 less the ink, as writers of the Adobe segment do
 * @param profile the colour profile
 * @param dpi stated resolution, by JFIF or else by Exif
 * @param exif the Exif block
 * @param head a head for the platform's decoder: what it needs of the segments before the first scan, and no more
 * @param scanAt where in the file the first scan's segment begins
 */
record JpegHeader(
        JpegFrame frame,
        PixelSize size,
        JpegColour colour,
        boolean interleaved,
        boolean inverted,
        EmbeddedProfile profile,
        OptionalDouble dpi,
        ExifBlock exif,
        ByteBuffer head,
        long scanAt) {}
