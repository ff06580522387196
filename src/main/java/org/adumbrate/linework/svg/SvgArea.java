package org.adumbrate.linework.svg;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.linework.clip.TooIntricateException;
import org.adumbrate.linework.page.LibraryWords;

/**
 * What an SVG fills, as one region. Where it fills nothing, what its closed strokes enclose. Colours, clip paths, texts and
 * images count for nothing, and nothing that the file refers to outside itself is opened.
 */
public final class SvgArea {
    private static final String REMEDY = "draw it as a filled path and export it as plain SVG";

    private SvgArea() {}

    /**
     * Reads a file.
     *
     * @return the region in user units of the outermost element, whose origin it keeps; not empty
     * @throws InputFault if the file is missing, is not sound SVG, fills nothing, or is too intricate
     */
    public static Region<PagePoint> read(Path file) throws InputFault {
        if (!Files.exists(file)) {
            throw new InputFault(file, "does not exist", "check the name and the folder");
        }
        if (Files.isDirectory(file)) {
            throw new InputFault(file, "is a folder, not a file", "name the SVG in it");
        }
        return area(file, SvgDocument.read(file));
    }

    /**
     * Reads from a stream.
     *
     * @param file what the stream is called in complaints
     * @return as {@link #read(Path)}
     * @throws InputFault as {@link #read(Path)}
     */
    public static Region<PagePoint> read(Path file, InputStream in) throws InputFault {
        return area(file, SvgDocument.read(file, in));
    }

    private static Region<PagePoint> area(Path file, SvgDocument document) throws InputFault {
        try {
            SvgFills fills = new SvgFills(file);
            new SvgWalk(file, document, fills).drawChildren(document.root(), SvgFills.scene(document));
            Optional<Region<PagePoint>> region = fills.region();
            if (region.isEmpty()) {
                throw new InputFault(file, "holds no filled shape", REMEDY);
            }
            return region.get();
        } catch (TooIntricateException e) {
            throw new InputFault(file, e.getMessage(), "simplify its paths first", e);
        } catch (RuntimeException e) {
            throw new InputFault(file, "cannot be read as SVG (" + LibraryWords.of(e) + ")", REMEDY, e);
        }
    }
}
