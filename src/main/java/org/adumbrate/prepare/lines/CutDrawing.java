package org.adumbrate.prepare.lines;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.adumbrate.drawing.DrawingOrder;
import org.adumbrate.drawing.Layer;
import org.adumbrate.drawing.Mark;
import org.adumbrate.drawing.Pen;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.region.ClosedRegions;
import org.adumbrate.linework.region.HatchLines;
import org.adumbrate.linework.region.LinesWithin;
import org.adumbrate.linework.region.LooseEnd;
import org.adumbrate.linework.region.ThinParts;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.sheetfile.Cut;
import org.adumbrate.sheetfile.Hatch;

/**
 * The section cut as it is drawn: its backing, which covers what lies behind, its hatch, and its outline.
 *
 * @param content by what the region is known
 * @param region what is cut
 * @param layers backing, hatch, outline, as far as they are wanted
 * @param findings lines that do not close, or whose inside is uncertain
 */
public record CutDrawing(List<Object> content, Region<SheetPoint> region, List<Layer> layers, List<Finding> findings) {
    public static final CutDrawing NONE = new CutDrawing(List.of(), Region.empty(Space.SHEET), List.of(), List.of());

    private static final String KEY = "cut";

    private static final String GROUP = "cut";

    /** Where the cut runs off the sheet, its outline does not follow the sheet's edge. */
    private static final double EDGE_MM = 0.02;

    private static final double TOLERANCE_MM = 0.005;

    /** A cut that takes up this share of the sheet's top edge may as well be what lies around the cut. */
    private static final double DOUBTFUL_SHARE = 0.25;

    /** So many loose ends are told one by one. */
    private static final int TOLD = 3;

    /** Less line than this within the cut, in mm, may stick out of a room. */
    private static final double MUCH_MM = 10;

    /**
     * What the lines of the cut enclose.
     *
     * @param region with its thin parts made as thick as they are drawn; empty where the lines enclose nothing
     * @param outline its outline, without the edge of the sheet
     * @param findings lines that do not close, or whose inside is uncertain
     */
    private record Enclosed(Region<SheetPoint> region, VectorPath<SheetPoint> outline, List<Finding> findings) {}

    /** Other lines that lie within the cut. */
    private record Covered(Optional<LinesWithin> lines) {}

    /**
     * The cut as it is drawn.
     *
     * @param sorted its outline as the line sheets have it, in pieces, and the other lines, which must not lie within it
     */
    public static CutDrawing of(Cut asked, SortedLines sorted, SheetSize sheet, Run run) throws IOException {
        LineSet lines = sorted.cut();
        if (lines.isEmpty()) {
            Finding none = new Finding(
                    Finding.Severity.WARNING,
                    KEY,
                    "cut: no line has the colour " + asked.color() + ", so no cut is drawn");
            return new CutDrawing(List.of(), Region.empty(Space.SHEET), List.of(), List.of(none));
        }
        List<Object> content = List.of(lines.content(), sheet, asked.gap(), asked.thinnest());
        Enclosed cut = run.of(Part.CUT, Enclosed.class, content, () -> enclosed(asked, lines.paths(), sheet));
        if (cut.region().isEmpty()) {
            return new CutDrawing(content, cut.region(), outline(asked, lines.paths()), cut.findings());
        }
        List<Layer> layers = new ArrayList<>();
        layers.add(layer(DrawingOrder.CUT_BACKING, new Mark.Area(KEY + ".backing", asked.backing(), 1, cut.region())));
        if (asked.hatch().isPresent()) {
            Hatch hatch = asked.hatch().get();
            layers.add(run.of(
                    Part.CUT_LAYERS,
                    Layer.class,
                    List.of(content, hatch),
                    () -> layer(DrawingOrder.CUT_HATCH, hatching(KEY + ".hatch", hatch, cut.region()))));
        }
        layers.addAll(outline(asked, List.of(cut.outline())));
        List<Finding> findings = new ArrayList<>(cut.findings());
        covered(content, cut.region(), sorted.byName().values(), run)
                .lines()
                .ifPresent(within -> tell(within, findings));
        return new CutDrawing(content, cut.region(), layers, findings);
    }

    private static Enclosed enclosed(Cut asked, List<VectorPath<SheetPoint>> lines, SheetSize sheet) {
        ClosedRegions.Closed closed = ClosedRegions.of(lines, sheet, asked.gap().mm());
        List<Finding> findings = new ArrayList<>();
        loose(closed.looseEnds(), asked, findings);
        top(closed.topMm(), sheet, findings);
        if (closed.region().isEmpty()) {
            findings.add(new Finding(
                    Finding.Severity.WARNING,
                    KEY,
                    "cut: its lines enclose nothing; they are drawn without backing or hatch"));
            return new Enclosed(closed.region(), closed.region().outline(), findings);
        }
        Region<SheetPoint> region = asked.thinnest().mm() > 0
                ? ThinParts.thickened(closed.region(), asked.thinnest().mm())
                : closed.region();
        return new Enclosed(region, withinSheet(region, sheet), findings);
    }

    private static Covered covered(List<Object> content, Region<SheetPoint> cut, Collection<LineSet> others, Run run)
            throws IOException {
        List<Object> from = new ArrayList<>(content);
        others.forEach(set -> from.add(set.content()));
        List<VectorPath<SheetPoint>> paths =
                others.stream().flatMap(set -> set.paths().stream()).toList();
        return run.of(Part.CUT_COVERS, Covered.class, from, () -> new Covered(LinesWithin.of(cut, paths)));
    }

    private static void tell(LinesWithin within, List<Finding> findings) {
        if (within.lengthMm() >= MUCH_MM) {
            // where only a few run through, the cut may have been exported by itself
            findings.add(new Finding(
                    within.isCrowded() ? Finding.Severity.WARNING : Finding.Severity.NOTE,
                    KEY,
                    String.format(
                            Locale.ROOT,
                            "cut: it covers %.0f mm of other lines, most of them about [%.1f, %.1f]; nothing shows inside what is"
                                    + " cut, so a room may have been taken for cut; look whether its outline is whole there,"
                                    + " and whether the export leaves out hidden lines",
                            within.lengthMm(),
                            within.at().x(),
                            within.at().y()),
                    List.of(within.at())));
        }
    }

    /**
     * The hatch of a region, clipped to it.
     *
     * @param key what asked for it
     */
    public static Mark hatching(String key, Hatch hatch, Region<SheetPoint> region) {
        Pen pen = new Pen(hatch.width().mm(), Srgb.BLACK, Dash.NONE, LineCap.BUTT, LineJoin.ROUND);
        return new Mark.Lines(
                key,
                pen,
                HatchLines.lines(
                        region, hatch.angle().degrees(), hatch.spacing().mm(), hatch.crossing()));
    }

    private static VectorPath<SheetPoint> withinSheet(Region<SheetPoint> region, SheetSize sheet) {
        Region<SheetPoint> within =
                Region.rectangle(Space.SHEET, EDGE_MM, EDGE_MM, sheet.widthMm() - EDGE_MM, sheet.heightMm() - EDGE_MM);
        return within.clip(region.outline(), TOLERANCE_MM);
    }

    private static List<Layer> outline(Cut asked, List<VectorPath<SheetPoint>> lines) {
        if (asked.outline().mm() == 0) {
            return List.of();
        }
        Pen pen = new Pen(asked.outline().mm(), Srgb.BLACK, Dash.NONE, LineCap.ROUND, LineJoin.MITER);
        return List.of(layer(DrawingOrder.CUT_OUTLINE, new Mark.Lines(KEY + ".outline", pen, lines)));
    }

    private static Layer layer(String name, Mark mark) {
        return Layer.of(name, List.of(mark)).within(GROUP);
    }

    private static void loose(List<LooseEnd> ends, Cut asked, List<Finding> findings) {
        if (ends.isEmpty()) {
            return;
        }
        String places = ends.stream()
                .limit(TOLD)
                .map(end -> String.format(
                        Locale.ROOT,
                        "[%.1f, %.1f]",
                        end.position().x(),
                        end.position().y()))
                .collect(Collectors.joining(", "));
        findings.add(new Finding(
                Finding.Severity.WARNING,
                KEY,
                "cut: " + ends.size() + (ends.size() == 1 ? " end meets" : " ends meet") + " nothing within "
                        + asked.gap().mm() + " mm, at " + places + (ends.size() > TOLD ? " and elsewhere" : "")
                        + "; close the outline in the model or widen cut.gap",
                ends.stream().map(LooseEnd::position).toList()));
    }

    /** Lines that run off the top say nothing of the side that the cut lies on. */
    private static void top(double topMm, SheetSize sheet, List<Finding> findings) {
        if (topMm > EDGE_MM) {
            boolean doubtful = topMm >= DOUBTFUL_SHARE * sheet.widthMm();
            findings.add(new Finding(
                    doubtful ? Finding.Severity.WARNING : Finding.Severity.NOTE,
                    KEY,
                    String.format(
                            Locale.ROOT,
                            "cut: its lines run off the top of the sheet, and what takes up most of that edge is taken to be open:"
                                    + " the cut has %.0f of its %.0f mm; if the wrong side is hatched, leave room above it",
                            topMm,
                            sheet.widthMm())));
        }
    }
}
