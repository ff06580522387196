package org.adumbrate.build;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.perspective.View;

/**
 * What people are placed in.
 *
 * @param sheet the sheet's size
 * @param view how it shows the model
 * @param elevations of the floors by name, in metres
 * @param depth how far everything is, if that is known
 * @param regions the named regions
 * @param cut what the section plane slices; it covers everything behind it
 * @param edges the lines of the sheet
 */
record Scene(
        SheetSize sheet,
        View view,
        Map<String, Double> elevations,
        Optional<DepthMap> depth,
        Map<String, Region<SheetPoint>> regions,
        Region<SheetPoint> cut,
        List<VectorPath<SheetPoint>> edges) {}
