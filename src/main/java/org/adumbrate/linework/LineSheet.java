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
 * @param otherMarks how many filled areas, texts and images it shows besides, which are not lines and are left out
 */
public record LineSheet(Path file, SheetSize page, List<Stroke> strokes, int otherMarks) {
    /** Copies the list. */
    public LineSheet {
        strokes = List.copyOf(strokes);
    }
}
