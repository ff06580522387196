package org.adumbrate.raster.decode.tiff;

import java.io.BufferedInputStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import org.adumbrate.raster.decode.jpeg.JpegFrame;
import org.adumbrate.raster.decode.jpeg.JpegSegments;
import org.adumbrate.raster.decode.metadata.TiffFields;
import org.adumbrate.raster.decode.metadata.TiffTag;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * Looks into the JPEG in a TIFF's strips or tiles before the library does: each is a picture of its own, whose size the
 * library believes whatever the strip's is.
 */
final class TiffJpeg {
    /** A writer may fill the last blocks up: up to four of eight samples each way. */
    private static final int ROUNDED_TO = 32;

    private final SourceFile file;
    private final TiffBlocks blocks;

    private TiffJpeg(SourceFile file, TiffBlocks blocks) {
        this.file = file;
        this.blocks = blocks;
    }

    /** @throws org.adumbrate.fault.InputFault if a strip or tile holds another picture than it should */
    static void check(SourceFile file, TiffFields fields, TiffBlocks blocks) throws IOException {
        new TiffJpeg(file, blocks).check(fields);
    }

    private void check(TiffFields fields) throws IOException {
        if (fields.has(TiffTag.JPEG_TABLES)) {
            checkTables(fields.bytes(TiffTag.JPEG_TABLES));
        }
        long[] offsets = fields.numbers(blocks.offsetsTag());
        try (FileChannel channel = FileChannel.open(file.path())) {
            for (long offset : offsets) {
                checkBlock(Channels.newInputStream(channel.position(offset)));
            }
        }
    }

    /** Tables for all strips hold no picture. */
    private void checkTables(byte[] tables) throws IOException {
        try (JpegSegments segments = new JpegSegments(file, new ByteArrayInputStream(tables))) {
            for (int marker = segments.next(); marker != JpegSegments.EOI; marker = segments.next()) {
                if (JpegFrame.isFrame(marker) || marker == JpegSegments.SOS) {
                    throw file.damaged("its JPEG tables hold a picture");
                }
                segments.body();
            }
        }
    }

    /** The stream belongs to the channel, which stays open. */
    private void checkBlock(InputStream in) throws IOException {
        JpegSegments segments = new JpegSegments(file, new BufferedInputStream(in, 1 << 10));
        int marker = segments.next();
        while (!JpegFrame.isFrame(marker)) {
            if (marker == JpegSegments.SOS || marker == JpegSegments.EOI) {
                throw file.damaged("the JPEG in its strips or tiles has no frame header");
            }
            segments.body();
            marker = segments.next();
        }
        JpegFrame frame = JpegFrame.read(file, marker, segments.body());
        if (frame.progressive()) {
            throw file.unsupported("TIFF of progressive JPEG");
        }
        if (frame.width() > roundedUp(blocks.width()) || frame.height() > roundedUp(blocks.height())) {
            throw file.damaged("the JPEG in a strip or tile of " + blocks.width() + " x " + blocks.height() + " px is "
                    + frame.width() + " x " + frame.height());
        }
        frame.requireKeepable(file);
    }

    private static int roundedUp(int side) {
        return (side + ROUNDED_TO - 1) / ROUNDED_TO * ROUNDED_TO;
    }
}
