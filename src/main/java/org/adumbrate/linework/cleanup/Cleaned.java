package org.adumbrate.linework.cleanup;

import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/**
 * Lines after a clean-up.
 *
 * @param paths one for each chain of pieces that meet end to end, in the order in which their first pieces came
 * @param counts what was done
 */
public record Cleaned(List<VectorPath<SheetPoint>> paths, CleanUpCounts counts) {
    /** Copies the list. */
    public Cleaned {
        paths = List.copyOf(paths);
    }
}
