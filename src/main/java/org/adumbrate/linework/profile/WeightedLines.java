package org.adumbrate.linework.profile;

import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/**
 * Lines of one weight.
 *
 * @param share their width as a share of the pen's
 * @param paths the lines
 */
public record WeightedLines(double share, List<VectorPath<SheetPoint>> paths) {
    /** Copies the list. */
    public WeightedLines {
        paths = List.copyOf(paths);
    }
}
