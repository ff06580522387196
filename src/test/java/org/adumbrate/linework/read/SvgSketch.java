package org.adumbrate.linework.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.Stroke;

/** Writes small SVG files for tests. */
final class SvgSketch {
    private SvgSketch() {}

    /** What is read of a page of 100 x 50 mm, a user unit being a millimetre. */
    static List<Stroke> strokes(Path folder, String content) throws IOException {
        return read(folder, "width='100mm' height='50mm' viewBox='0 0 100 50'", content)
                .strokes();
    }

    /** What is read of an svg element with attributes and content. */
    static LineSheet read(Path folder, String attributes, String content) throws IOException {
        Path file = Files.createTempFile(folder, "sketch", ".svg");
        return LineSheets.read(Files.writeString(
                file,
                "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' " + attributes + ">"
                        + content + "</svg>"));
    }
}
