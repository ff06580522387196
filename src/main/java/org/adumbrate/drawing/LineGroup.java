package org.adumbrate.drawing;

import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/**
 * Lines that are drawn with one pen and belong together: a layer of the drawing.
 *
 * @param name what the layer is called
 * @param pen what its lines are drawn with
 * @param paths the lines, in drawing order
 */
public record LineGroup(String name, Pen pen, List<VectorPath<SheetPoint>> paths) {
    /** Copies the list. */
    public LineGroup {
        paths = List.copyOf(paths);
    }
}
