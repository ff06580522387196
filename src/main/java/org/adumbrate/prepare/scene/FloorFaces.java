package org.adumbrate.prepare.scene;

import java.io.IOException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.adumbrate.figure.shadow.Receiver;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.region.SeenFaces;
import org.adumbrate.prepare.lines.KnownRegion;
import org.adumbrate.prepare.lines.LineSet;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.sheetfile.PenRole;
import org.adumbrate.sheetfile.PenStyle;
import org.adumbrate.sheetfile.Sheet;

/**
 * Where shadows may fall without a depth pass: on the part of a floor that is seen around a foot, up to the next line. That may be less than the
 * floor, as beyond the leg of a table, but it is never a wall, nor what stands on the floor, nor the air beyond its end.
 */
final class FloorFaces {
    /** What these pens draw does not end a floor: it lies on it, or can be seen through. */
    private static final Set<PenRole> NO_END = EnumSet.of(PenRole.PAVING, PenRole.GLASS, PenRole.NEIGHBOUR);

    /** Exports leave gaps up to this between pieces, in mm. */
    private static final double GAP_MM = 0.5;

    private final Scene scene;
    private final SeenFaces faces;

    private FloorFaces(Scene scene, SeenFaces faces) {
        this.scene = scene;
        this.faces = faces;
    }

    static FloorFaces of(Sheet sheet, Scene scene, Run run) throws IOException {
        List<LineSet> ends = new ArrayList<>(List.of(scene.sorted().cut()));
        scene.sorted().byName().forEach((name, lines) -> {
            PenStyle pen = sheet.pens().get(name);
            if (pen != null && !NO_END.contains(pen.role())) {
                ends.add(lines);
            }
        });
        List<Object> from = new ArrayList<>(List.of(scene.sheet()));
        ends.forEach(lines -> from.add(lines.content()));
        SeenFaces faces =
                run.of(Part.SEEN_FACES, SeenFaces.class, from, () -> SeenFaces.of(paths(ends), scene.sheet(), GAP_MM));
        return new FloorFaces(scene, faces);
    }

    private static List<VectorPath<SheetPoint>> paths(List<LineSet> sets) {
        return sets.stream().flatMap(set -> set.paths().stream()).toList();
    }

    /** The floor that somebody stands on: as far as the sheet file says, or else as far as it is seen around the foot. */
    Receiver.Floor under(StandingItem item) {
        double elevation = scene.elevations().get(item.floor());
        return new Receiver.Floor(
                elevation,
                stated(item.floor()).or(() -> seenAround(item.figure().spot().foot())));
    }

    private Optional<Region<SheetPoint>> stated(String name) {
        return Optional.ofNullable(scene.floors().get(name)).map(KnownRegion::region);
    }

    private Optional<Region<SheetPoint>> seenAround(SheetPoint foot) {
        OptionalInt face = faces.at(foot);
        return face.isPresent() ? Optional.of(faces.region(face.getAsInt())) : Optional.empty();
    }
}
