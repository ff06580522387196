package org.adumbrate.prepare.lines;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.adumbrate.drawing.DrawingOrder;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.Stroke;
import org.adumbrate.linework.region.Veils;
import org.adumbrate.linework.sort.ColorSort;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.sheetfile.PenRole;
import org.adumbrate.sheetfile.PenStyle;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.Veil;

/**
 * The veils as they are drawn: a translucent fill each, and lines over it where they are wanted.
 *
 * @param layers one for each veil
 * @param findings veils that cover nothing, and points in faces that they can hardly have been chosen in
 */
public record VeilDrawing(List<Layer> layers, List<Finding> findings) {
    /**
     * The veils of a sheet.
     *
     * @param regions its named regions
     * @param faces knows the faces of its drawing
     */
    public static VeilDrawing of(
            Sheet sheet, LineFiles files, Map<String, KnownRegion> regions, FaceRegions faces, Run run)
            throws IOException {
        List<Layer> layers = new ArrayList<>();
        List<Finding> findings = new ArrayList<>();
        for (Map.Entry<String, Veil> entry : sheet.veils().entrySet()) {
            String name = entry.getKey();
            Veil veil = entry.getValue();
            KnownRegion covered;
            if (veil instanceof Veil.ByFaces stated) {
                FaceRegions.Named named = faces.of(key(name), stated);
                findings.addAll(named.findings());
                covered = named.known();
            } else {
                covered = region(sheet, name, veil, files, regions, run);
            }
            if (covered.region().isEmpty()) {
                findings.add(new Finding(
                        Finding.Severity.WARNING,
                        key(name),
                        "veils: '" + name + "' covers nothing; " + help(sheet, veil)));
                continue;
            }
            layers.add(run.of(
                    Part.LAYERS,
                    Layer.class,
                    List.of(key(name), covered.content(), veil.fill(), veil.opacity(), veil.etch()),
                    () -> layer(name, veil, covered.region())));
        }
        return new VeilDrawing(layers, findings);
    }

    private static Layer layer(String name, Veil veil, Region<SheetPoint> region) {
        List<Mark> marks = new ArrayList<>();
        marks.add(new Mark.Area(key(name), veil.fill(), veil.opacity().share(), region));
        veil.etch().ifPresent(etch -> marks.add(CutDrawing.hatching(key(name) + ".etch", etch, region)));
        return Layer.of(DrawingOrder.fillOf(name), marks);
    }

    private static String key(String name) {
        return "veils." + name;
    }

    private static String help(Sheet sheet, Veil veil) {
        if (veil instanceof Veil.ByLines shown) {
            String all = "no lines of the colour " + shown.color() + " close";
            String colors = "see the colours with adumbrate lines, or widen 'gap'";
            return VeilLines.coverStems(sheet, shown)
                    ? all + "; " + colors
                    : all + " around more than stems; " + colors + ", or cover stems too with 'stems: true'";
        }
        return "look at its points or its region";
    }

    private static KnownRegion region(
            Sheet sheet, String name, Veil veil, LineFiles files, Map<String, KnownRegion> regions, Run run)
            throws IOException {
        if (veil instanceof Veil.ByPoints stated) {
            return new KnownRegion(List.of(stated.points()), SheetRegions.ofPolygons(stated.points()));
        }
        if (veil instanceof Veil.ByRegion named) {
            return regions.get(named.region());
        }
        Veil.ByLines shown = (Veil.ByLines) veil;
        boolean stems = VeilLines.coverStems(sheet, shown);
        List<Object> content = content(sheet, name, shown, stems, files, run);
        return new KnownRegion(
                content,
                run.of(Part.VEILS, Enclosed.class, content, () -> enclosed(sheet, name, shown, files, stems))
                        .region());
    }

    /** What lines of a veil enclose. */
    private record Enclosed(Region<SheetPoint> region) {}

    /** What it covers, with stems or without: not how it covers it. */
    private static List<Object> content(
            Sheet sheet, String name, Veil.ByLines veil, boolean stems, LineFiles files, Run run) {
        Object lines = files.veils().containsKey(name) ? run.digest(veil.lines().orElseThrow()) : "the sheet's own";
        List<Srgb> seenThrough = new ArrayList<>();
        sheet.heights().ifPresent(heights -> seenThrough.add(heights.color()));
        sheet.pens().values().stream().filter(VeilDrawing::isSeenThrough).forEach(pen -> seenThrough.add(pen.color()));
        sheet.veils().values().forEach(other -> {
            if (other instanceof Veil.ByLines shown) {
                seenThrough.add(shown.color());
            }
        });
        return List.of(
                files.content(),
                List.copyOf(files.taken().keySet()),
                List.copyOf(files.taken().values()),
                lines,
                veil.color(),
                seenThrough,
                veil.gap(),
                stems);
    }

    private static Enclosed enclosed(Sheet sheet, String name, Veil.ByLines shown, LineFiles files, boolean stems) {
        Region<SheetPoint> all = enclosed(sheet, name, shown, files);
        return new Enclosed(stems ? all : Veils.withoutStems(all));
    }

    private static boolean isSeenThrough(PenStyle pen) {
        return pen.role() == PenRole.GLASS || pen.role() == PenRole.NEIGHBOUR;
    }

    private static Region<SheetPoint> enclosed(Sheet sheet, String name, Veil.ByLines shown, LineFiles files) {
        List<VectorPath<SheetPoint>> own = new ArrayList<>();
        List<VectorPath<SheetPoint>> others = new ArrayList<>();
        List<LaidLines> sheets =
                files.veils().containsKey(name) ? List.of(files.veils().get(name)) : files.base();
        for (LaidLines laid : sheets) {
            for (Stroke stroke : laid.lines().strokes()) {
                if (isNear(stroke, shown.color())) {
                    own.add(stroke.path().transform(laid.toSheet()));
                } else if (hides(sheet, stroke)) {
                    others.add(stroke.path().transform(laid.toSheet()));
                }
            }
        }
        return Veils.enclosed(own, others, files.sheet(), shown.gap().mm());
    }

    /** What can be seen through hides no outline, and height lines stand in front of everything. */
    private static boolean hides(Sheet sheet, Stroke stroke) {
        if (sheet.heights().filter(heights -> isNear(stroke, heights.color())).isPresent()) {
            return false;
        }
        for (PenStyle pen : sheet.pens().values()) {
            if (isSeenThrough(pen) && isNear(stroke, pen.color())) {
                return false;
            }
        }
        return sheet.veils().values().stream()
                .noneMatch(veil -> veil instanceof Veil.ByLines other && isNear(stroke, other.color()));
    }

    private static boolean isNear(Stroke stroke, Srgb color) {
        return stroke.color().distanceTo(color) <= ColorSort.TOLERANCE;
    }
}
