package org.adumbrate.prepare.lines;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.drawing.DrawingOrder;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.drawing.Pen;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.profile.ProfileLines;
import org.adumbrate.linework.profile.ProfileSettings;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.sheetfile.Profile;
import org.adumbrate.sheetfile.Sheet;

/** The heavier outline of the building in the view. */
public final class ProfileDrawing {
    private static final String KEY = "profile";

    private ProfileDrawing() {}

    /**
     * The layer of the profile.
     *
     * @param pens the cleaned lines by the names of their pens
     * @param cut the outline of the cut
     * @param depth how far everything is, if that is known
     */
    public static Layer of(Sheet sheet, Map<String, CleanLines> pens, LineSet cut, Optional<KnownDepth> depth, Run run)
            throws IOException {
        Profile asked = sheet.profile().orElseThrow();
        List<CleanLines> building = asked.pensOf(sheet.pens()).stream()
                .filter(pens::containsKey)
                .map(pens::get)
                .toList();
        List<Object> content = List.of(
                building.stream().map(CleanLines::content).toList(),
                cut.content(),
                depth.map(KnownDepth::content).orElse(List.of()));
        Pen pen = Pen.round(asked.width().mm(), asked.ink());
        return run.of(Part.LAYERS, Layer.class, List.of(DrawingOrder.PROFILE, pen, content), () -> {
            Outlined outline =
                    run.of(Part.PROFILE, Outlined.class, content, () -> new Outlined(outline(building, cut, depth)));
            return Layer.of(DrawingOrder.PROFILE, List.of(new Mark.Lines(KEY, pen, outline.lines())));
        });
    }

    /** The lines of an outline. */
    private record Outlined(List<VectorPath<SheetPoint>> lines) {}

    private static List<VectorPath<SheetPoint>> outline(
            List<CleanLines> pens, LineSet cut, Optional<KnownDepth> depth) {
        List<VectorPath<SheetPoint>> building =
                pens.stream().flatMap(pen -> pen.paths().stream()).toList();
        return depth.isPresent()
                ? ProfileLines.of(building, cut.paths(), depth.get().field(), ProfileSettings.STANDARD)
                : ProfileLines.of(building, cut.paths(), ProfileSettings.STANDARD);
    }
}
