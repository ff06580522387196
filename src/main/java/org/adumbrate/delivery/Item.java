package org.adumbrate.delivery;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.PdfDrawing;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.raster.LightSink;
import org.adumbrate.raster.encode.FlateRowsEncoder;
import org.adumbrate.raster.encode.OutputProfile;
import org.adumbrate.raster.encode.PictureFormat;
import org.adumbrate.raster.encode.StripEncoder;

/** An item in the making that takes the strips of the underlay. */
interface Item extends Closeable {
    /** Takes the strips. */
    LightSink sink();

    /** Completes the item and puts it in its place. */
    Output finish() throws IOException;

    /** A picture that an encoder writes. */
    static Item picture(String kind, Path file, PictureFormat format, StripEncoder encoder) {
        return picture(kind, file, format, encoder, encoder);
    }

    /** A picture that an encoder writes of what a sink makes of the strips. */
    static Item picture(String kind, Path file, PictureFormat format, LightSink sink, StripEncoder encoder) {
        return new Item() {
            @Override
            public LightSink sink() {
                return sink;
            }

            @Override
            public Output finish() throws IOException {
                return new Output(file, kind, format.size(), format.dpi(), encoder.finish());
            }

            @Override
            public void close() throws IOException {
                encoder.close();
            }
        };
    }

    /** The PDF with the underlay below the layers. */
    static Item drawing(Path file, PictureFormat format, SheetSize sheet, List<Layer> layers) throws IOException {
        PdfDrawing drawing = PdfDrawing.begin(file, sheet);
        StripEncoder rows = new FlateRowsEncoder(
                format, drawing.underlay(format.size(), format.channels(), OutputProfile.of(format.channels())));
        return new Item() {
            @Override
            public LightSink sink() {
                return rows;
            }

            @Override
            public Output finish() throws IOException {
                rows.finish();
                drawing.layers(layers);
                drawing.finish();
                return new Output(file, "drawing", format.size(), format.dpi(), Files.size(file));
            }

            @Override
            public void close() throws IOException {
                drawing.close();
            }
        };
    }
}
