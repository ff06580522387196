package org.adumbrate.raster.decode.tiff;

import java.io.IOException;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.decode.metadata.TiffFields;
import org.adumbrate.raster.decode.metadata.TiffTag;
import org.adumbrate.raster.decode.source.SourceFile;

/**
 * The strips or tiles of a TIFF; a strip is a tile as wide as the picture.
 *
 * @param tiled whether they are tiles
 * @param width of a block in pixels
 * @param height of a block in pixels
 * @param across blocks in a row of blocks
 * @param down rows of blocks
 */
record TiffBlocks(boolean tiled, int width, int height, int across, int down) {
    /** Reads where they lie, and holds it against the length of the file. */
    static TiffBlocks read(SourceFile file, TiffFields fields, PixelSize size, int planes) throws IOException {
        boolean tiled = fields.has(TiffTag.TILE_OFFSETS);
        long width = tiled ? fields.number(TiffTag.TILE_WIDTH, 0) : size.width();
        long height = tiled
                ? fields.number(TiffTag.TILE_HEIGHT, 0)
                : Math.min(size.height(), fields.number(TiffTag.ROWS_PER_STRIP, size.height()));
        if (width < 1 || height < 1 || width > SourceFile.LONGEST_SIDE || height > SourceFile.LONGEST_SIDE) {
            throw file.damaged("its blocks measure " + width + " x " + height + " px");
        }
        TiffBlocks blocks = new TiffBlocks(
                tiled, (int) width, (int) height, ceilDiv(size.width(), (int) width), ceilDiv(size.height(), (int)
                        height));
        blocks.check(file, fields, planes);
        return blocks;
    }

    private static int ceilDiv(int a, int b) {
        return (a + b - 1) / b;
    }

    private void check(SourceFile file, TiffFields fields, int planes) throws IOException {
        long[] offsets = fields.numbers(offsetsTag());
        long[] counts = fields.numbers(countsTag());
        long blocks = (long) across * down * planes;
        String kind = tiled ? "tile " : "strip ";
        if (offsets.length < blocks || counts.length < blocks) {
            throw file.damaged("its directory lists " + Math.min(offsets.length, counts.length) + " of " + blocks + " "
                    + kind.strip() + "s");
        }
        for (int i = 0; i < blocks; i++) {
            if (offsets[i] <= 0 || counts[i] <= 0) {
                throw file.damaged(kind + i + " is missing");
            }
            if (offsets[i] > file.bytes() || counts[i] > file.bytes() - offsets[i]) {
                throw file.endsEarly("in " + kind + i + " of " + blocks);
            }
        }
    }

    /** The field that says where they begin. */
    int offsetsTag() {
        return tiled ? TiffTag.TILE_OFFSETS : TiffTag.STRIP_OFFSETS;
    }

    /** The field that says how long they are. */
    int countsTag() {
        return tiled ? TiffTag.TILE_BYTE_COUNTS : TiffTag.STRIP_BYTE_COUNTS;
    }
}
