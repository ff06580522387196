package org.adumbrate.prepare.scene;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.perspective.View;
import org.adumbrate.prepare.lines.CutDrawing;
import org.adumbrate.prepare.lines.KnownDepth;
import org.adumbrate.prepare.lines.KnownRegion;
import org.adumbrate.prepare.lines.LineFiles;
import org.adumbrate.prepare.lines.SortedLines;

/**
 * What people are placed in.
 *
 * @param files the line sheets
 * @param sorted their lines by pen
 * @param view how the sheet shows the model
 * @param elevations of the floors by name, in metres
 * @param depth how far everything is, if that is known
 * @param regions the named regions
 * @param floors where floors are seen by the floor's name, of those that say it
 * @param cut what the section plane slices; it covers everything behind it
 */
record Scene(
        LineFiles files,
        SortedLines sorted,
        View view,
        Map<String, Double> elevations,
        Optional<KnownDepth> depth,
        Map<String, KnownRegion> regions,
        Map<String, KnownRegion> floors,
        CutDrawing cut) {

    /** The sheet's size. */
    SheetSize sheet() {
        return files.sheet();
    }

    /** The lines of the sheet. */
    List<VectorPath<SheetPoint>> edges() {
        return files.paths();
    }

    /** By what the depth pass is known; nothing where there is none. */
    List<Object> depthContent() {
        return depth.map(KnownDepth::content).orElse(List.of());
    }
}
