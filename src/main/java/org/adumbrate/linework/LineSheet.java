package org.adumbrate.linework;

import java.nio.file.Path;
import java.util.List;
import org.adumbrate.geometry.SheetSize;

/**
 * A vector line sheet as read from its file.
 *
 * @param file where it came from
 * @param page the size of its visible page
 * @param strokes its strokes in drawing order
 * @param otherMarks how many filled areas, texts, images and strokes without a colour of their own (patterns, gradients)
 *     it shows besides, which are not lines and are left out
 * @param pages how many pages the file has, at least 1; only the first is read, so more than one is worth telling
 */
public record LineSheet(Path file, SheetSize page, List<Stroke> strokes, int otherMarks, int pages) {
    /** Copies the list. */
    public LineSheet {
        strokes = List.copyOf(strokes);
    }

    /** A sheet from a file of a single page. */
    public LineSheet(Path file, SheetSize page, List<Stroke> strokes, int otherMarks) {
        this(file, page, strokes, otherMarks, 1);
    }
}
