package org.adumbrate.prepare.lines;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.region.PointedFaces;
import org.adumbrate.linework.region.SeenFaces;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.sheetfile.PenStyle;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.StatedFaces;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.reading.SheetFile;

/** Regions that a sheet file names by points in the faces of its drawing. Lines of veils that no pen draws, and height lines, bound none. */
public final class FaceRegions {
    private final SheetFile file;
    private final SortedLines sorted;
    private final SheetSize sheet;
    private final Run run;

    /**
     * Of one sheet.
     *
     * @param sorted its lines by pen
     * @param sheet its size
     */
    public FaceRegions(SheetFile file, SortedLines sorted, SheetSize sheet, Run run) {
        this.file = file;
        this.sorted = sorted;
        this.sheet = sheet;
        this.run = run;
    }

    /**
     * A region by its faces.
     *
     * @param findings points that do not lie in what they may have been chosen in
     */
    public record Named(KnownRegion known, List<Finding> findings) {
        /** Copies the list. */
        public Named {
            findings = List.copyOf(findings);
        }
    }

    /**
     * The region that faces cover between them.
     *
     * @param key the key path of what names them, such as {@code regions.counter}
     * @throws SheetFileFault if a point lies off the sheet
     */
    public Named of(String key, StatedFaces asked) throws IOException {
        requireOnSheet(key, asked.faces());
        List<LineSet> lines = lines(asked.of());
        List<Object> content =
                List.of(sheet, lines.stream().map(LineSet::content).toList(), asked.gap(), asked.faces());
        PointedFaces pointed = run.of(Part.REGIONS, PointedFaces.class, content, () -> seen(lines, asked.gap())
                .named(asked.faces()));
        return new Named(new KnownRegion(content, pointed.region()), FaceFindings.of(key, asked, pointed, sheet));
    }

    /**
     * A face that somebody points into.
     *
     * @param number equal for two points in one face
     * @param onLine true if a line runs through the point
     */
    public record Face(int number, boolean onLine, Region<SheetPoint> region) {}

    /** The face that a point lies in between all lines that are drawn; nothing off the sheet. */
    public Optional<Face> at(SheetPoint point) throws IOException {
        PointedFaces pointed = seen(lines(List.of()), StatedFaces.USUAL_GAP).named(List.of(point));
        PointedFaces.Spot spot = pointed.spots().get(0);
        return spot.face() == PointedFaces.NONE
                ? Optional.empty()
                : Optional.of(new Face(spot.face(), spot.onLine(), pointed.region()));
    }

    private SeenFaces seen(List<LineSet> lines, Length gap) throws IOException {
        return run.of(
                Part.SEEN_FACES,
                SeenFaces.class,
                List.of(sheet, lines.stream().map(LineSet::content).toList(), gap),
                () -> SeenFaces.of(
                        lines.stream().flatMap(set -> set.paths().stream()).toList(), sheet, gap.mm()));
    }

    private void requireOnSheet(String key, List<SheetPoint> points) throws SheetFileFault {
        List<Complaint> off = new ArrayList<>();
        for (int k = 0; k < points.size(); k++) {
            SheetPoint point = points.get(k);
            boolean isOn =
                    point.x() > 0 && point.y() > 0 && point.x() < sheet.widthMm() && point.y() < sheet.heightMm();
            if (!isOn) {
                String text = FaceFindings.told(point) + " lies off the sheet, which is " + sheet
                        + "; give a point within the face, in mm from the top left corner";
                off.add(file.complaint(key + ".faces[" + k + "]", text));
            }
        }
        if (!off.isEmpty()) {
            throw new SheetFileFault(off);
        }
    }

    /** The stated lines, also those that are not drawn; or else all that are. */
    private List<LineSet> lines(List<String> of) {
        if (of.isEmpty()) {
            return drawn();
        }
        return of.stream()
                .map(name -> name.equals(StatedFaces.CUT)
                        ? sorted.cut()
                        : sorted.byName().getOrDefault(name, LineSet.NONE))
                .toList();
    }

    private List<LineSet> drawn() {
        Sheet asked = file.sheet();
        List<LineSet> drawn = new ArrayList<>(List.of(sorted.cut()));
        for (Map.Entry<String, PenStyle> pen : asked.pens().entrySet()) {
            if (!pen.getValue().hidden() && sorted.byName().containsKey(pen.getKey())) {
                drawn.add(sorted.byName().get(pen.getKey()));
            }
        }
        List<VectorPath<SheetPoint>> strays = new ArrayList<>();
        for (Layer layer : sorted.strays()) {
            for (Mark mark : layer.marks()) {
                strays.addAll(((Mark.Lines) mark).paths());
            }
        }
        drawn.add(LineSet.of(strays));
        return drawn;
    }
}
