package org.adumbrate.linework.page;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.Recovered;
import org.adumbrate.linework.Stroke;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.clip.FlatOutline;
import org.adumbrate.linework.clip.TooIntricateException;
import org.adumbrate.linework.clip.VisibleArea;
import org.adumbrate.linework.cover.Cover;
import org.adumbrate.linework.cover.HiddenLines;
import org.adumbrate.linework.dashes.DashedLines;
import org.adumbrate.linework.outline.OutlinedLine;
import org.adumbrate.linework.outline.OutlinedLines;

/**
 * Gathers what a reader finds on a page, in the order of painting: strokes as far as clips let them be seen, areas that cover them,
 * anything else by number.
 */
public final class StrokeCollector {
    /** More than any drawing needs: 200 MB of strokes, and at most as much again of what they consist of. */
    public static final int MOST_STROKES = 1_000_000;

    private static final int MOST_SEGMENTS = 4_000_000;

    /** Pieces of a filled path that is looked at for lines: far more than a drawing exported as one path has. */
    private static final int MOST_OF_A_SHAPE = 1_000_000;

    /** Of all areas that cover. */
    private static final int MOST_EDGES = 2_000_000;

    private final Path file;
    private final SheetSize page;
    private final List<Stroke> strokes = new ArrayList<>();
    private long segments;
    private final List<Cover> covers = new ArrayList<>();
    private final LeftOutTally leftOut = new LeftOutTally();
    private final List<FlatOutline> areas = new ArrayList<>();
    private final ThinShapes thinShapes = new ThinShapes();
    private int edges;
    private int outside;
    private int clipped;

    public StrokeCollector(Path file, SheetSize page) {
        this.file = file;
        this.page = page;
    }

    /** All of the page. */
    public Clip<PagePoint> wholePage() {
        return Clip.rectangle(0, 0, page.widthMm(), page.heightMm());
    }

    /** Takes a stroked path, less what the clip hides. */
    public void stroke(VectorPath<PagePoint> path, Clip<PagePoint> clip, StrokeStyle style, Optional<String> layer)
            throws InputFault {
        if (path.isEmpty()) {
            return;
        }
        VectorPath<PagePoint> visible = clip.visible(path);
        if (visible.isEmpty()) {
            if (path.extent().filter(this::isOnPage).isPresent()) {
                clipped++;
            } else {
                outside++;
            }
            return;
        }
        add(style.stroke(ThereAndBack.once(visible), layer));
    }

    private boolean isOnPage(Extent box) {
        return box.left() < page.widthMm() && box.right() > 0 && box.top() < page.heightMm() && box.bottom() > 0;
    }

    private void add(Stroke stroke) throws InputFault {
        strokes.add(stroke);
        segments += stroke.path().segments() + stroke.dash().lengthsMm().size();
        if (strokes.size() > MOST_STROKES || segments > MOST_SEGMENTS) {
            throw new InputFault(
                    file,
                    "holds more than " + MOST_STROKES + " strokes or " + MOST_SEGMENTS + " pieces and dashes of them",
                    "export fewer objects at a time");
        }
    }

    /** How many strokes have been taken: the number that the next will have. */
    public int strokes() {
        return strokes.size();
    }

    /**
     * Takes a path that is filled in one colour: thin shapes of constant width as lines, what is left of it as an area.
     *
     * @return whether the stroke of its outline is taken, too, as that widens the lines
     */
    public boolean filled(
            VectorPath<PagePoint> path, FillRule rule, Clip<PagePoint> clip, AreaPaint paint, FillLook look)
            throws InputFault {
        if (!look.mayBeLine() || path.segments() > MOST_OF_A_SHAPE) {
            area(path, rule, clip, paint);
            return false;
        }
        OutlinedLines read = OutlinedLines.of(path, rule);
        boolean outlined = look.outline().isPresent();
        if (read.lines().isEmpty() || (outlined && !read.rest().isEmpty())) {
            area(path, rule, clip, paint);
            return false;
        }
        area(read.rest(), rule, clip, paint);
        for (OutlinedLine line : read.lines()) {
            ThinShape shape = new ThinShape(strokes.size(), line, rule, clip, paint, look);
            Optional<Stroke> stroke = shape.stroke(line);
            if (stroke.isPresent()) {
                thinShapes.add(shape);
                add(stroke.get());
            }
        }
        return outlined;
    }

    /** Takes an area, as far as the clip lets it be seen; its runs count as closed. A straight line there and back is none. */
    public void area(VectorPath<PagePoint> path, FillRule rule, Clip<PagePoint> clip, AreaPaint paint) {
        if (path.isEmpty()) {
            return;
        }
        Optional<VisibleArea> visible = clip.visibleArea(path, rule, MOST_EDGES);
        if (visible.isEmpty()) {
            return;
        }
        boolean flat = visible.get().outline().edges() <= 2;
        if (flat) {
            return;
        }
        leftOut.add(paint.kind(), visible.get().mm2());
        areas.add(visible.get().outline());
        if (paint.covers() && paint.since() < strokes.size()) {
            covers.add(new Cover(visible.get(), paint.since(), strokes.size()));
            edges += visible.get().outline().edges();
            if (edges > MOST_EDGES) {
                throw new TooIntricateException("has filled areas of more than " + MOST_EDGES + " edges");
            }
        }
    }

    /** Counts a mark that is not a line and covers no area that is known. */
    public void leftOut(LeftOut.Kind kind) {
        leftOut.add(kind, 0);
    }

    /** The sheet, unless it shows no line at all. */
    public LineSheet sheet(int pages) throws InputFault {
        return ifAny(pages).orElseThrow(() -> noLine(""));
    }

    /** The sheet; nothing if it shows no line at all. */
    public Optional<LineSheet> ifAny(int pages) {
        ThinShapes.Settled settled = thinShapes.settle(strokes, covers, areas, leftOut);
        HiddenLines lines = HiddenLines.taken(settled.strokes(), settled.covers());
        if (lines.seen().isEmpty()) {
            return Optional.empty();
        }
        DashedLines dashed = DashedLines.of(lines.seen());
        Recovered recovered = settled.recovered().withDashes(dashed.dashes(), dashed.lines());
        return Optional.of(new LineSheet(
                file, page, dashed.strokes(), leftOut.all(), lines.hidden(), recovered, pages, List.of()));
    }

    /**
     * What to say of a page that shows no line.
     *
     * @param besides what else is wrong with it, a clause, or nothing
     */
    public InputFault noLine(String besides) {
        return new InputFault(
                file,
                emptiness() + (besides.isEmpty() ? "" : "; " + besides),
                "export it again as lines, not as an image or as filled shapes");
    }

    private String emptiness() {
        if (!strokes.isEmpty()) {
            return "shows no line: areas are painted over all " + strokes.size() + " strokes";
        }
        if (clipped > 0) {
            return outside == 0
                    ? "shows no line: clips or masks hide all " + clipped + " strokes"
                    : "shows no line: clips or masks hide " + clipped + " strokes, and " + outside
                            + " lie outside the visible page of " + page;
        }
        if (outside > 0) {
            return "shows no line: all " + outside + " strokes lie outside the visible page of " + page;
        }
        return leftOut.isEmpty()
                ? "shows no line at all"
                : "shows no line, only " + leftOut.count() + " filled areas, texts or images";
    }
}
