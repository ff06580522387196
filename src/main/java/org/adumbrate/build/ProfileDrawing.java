package org.adumbrate.build;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.drawing.DrawingOrder;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.drawing.Pen;
import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.profile.DepthField;
import org.adumbrate.linework.profile.ProfileLines;
import org.adumbrate.linework.profile.ProfileSettings;
import org.adumbrate.sheetfile.Profile;
import org.adumbrate.sheetfile.Sheet;

/** The heavier outline of the building in the view. */
final class ProfileDrawing {
    private ProfileDrawing() {}

    /**
     * The layer of the profile.
     *
     * @param pens the lines by the names of their pens
     * @param cut the outline of the cut
     * @param depth how far everything is, if that is known
     * @param stages knows what it was before
     */
    static Layer of(
            Sheet sheet,
            Map<String, List<VectorPath<SheetPoint>>> pens,
            List<VectorPath<SheetPoint>> cut,
            Optional<DepthMap> depth,
            SheetStages stages)
            throws IOException {
        Profile asked = sheet.profile().orElseThrow();
        List<VectorPath<SheetPoint>> building = new ArrayList<>();
        List<String> drawn =
                asked.pensOf(sheet.pens()).stream().filter(pens::containsKey).toList();
        drawn.forEach(pen -> building.addAll(pens.get(pen)));
        ProfileSettings usual = ProfileSettings.STANDARD;
        List<VectorPath<SheetPoint>> outline = stages.profile(
                drawn,
                PenDrawing.settings(sheet.cleanUp()),
                () -> depth.isPresent()
                        ? ProfileLines.of(building, cut, field(depth.get()), usual)
                        : ProfileLines.of(building, cut, usual));
        Pen pen = Pen.round(asked.width().mm(), asked.ink());
        return Layer.of(DrawingOrder.PROFILE, List.of(new Mark.Lines(pen, outline)));
    }

    /** A depth pass as a field of depths: nothing is known beyond its edges. */
    static DepthField field(DepthMap depth) {
        return point -> {
            double u = Math.floor(depth.toPixels().mapX(point.x(), point.y()));
            double v = Math.floor(depth.toPixels().mapY(point.x(), point.y()));
            return depth.holds((int) u, (int) v) ? 1 / (double) depth.inverse((int) u, (int) v) : Double.NaN;
        };
    }
}
