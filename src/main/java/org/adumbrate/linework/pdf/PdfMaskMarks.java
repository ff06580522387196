package org.adumbrate.linework.pdf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.clip.ClipShape;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.clip.FlatOutline;
import org.adumbrate.linework.clip.VisibleArea;
import org.adumbrate.linework.page.AreaPaint;
import org.adumbrate.linework.page.FillLook;
import org.adumbrate.linework.page.StrokeStyle;

/**
 * Marks that make a soft mask (ISO 32000-1, 11.5). What areas let through is known exactly; a mask that is made of anything else
 * lets everything through in part.
 */
final class PdfMaskMarks implements PdfMarks {
    private static final int MOST_AREAS = 2000;
    private static final int MOST_EDGES = 20_000;

    /** Half a level of 255: what is less shows nothing, what is nearer to 1 shows all. */
    private static final double LEAST = 0.002;

    private final ToDoubleFunction<PdfInk> value;
    private final DoubleUnaryOperator transfer;
    private final Region<PagePoint> everything;
    private final List<Region<PagePoint>> toShow = new ArrayList<>();
    private Region<PagePoint> shown;
    private boolean whole;
    private boolean half;
    private boolean unknown;
    private int areas;

    /**
     * A mask before anything is painted.
     *
     * @param backdrop what shows where nothing is painted, 0 to 1
     * @param value what a paint stands for, 0 to 1; not a number where that is not known
     * @param transfer what is made of such values
     * @param everything what a mask that hides nothing shows
     */
    PdfMaskMarks(
            double backdrop,
            ToDoubleFunction<PdfInk> value,
            DoubleUnaryOperator transfer,
            Region<PagePoint> everything) {
        this.value = value;
        this.transfer = transfer;
        this.everything = everything;
        double least = transfer.applyAsDouble(backdrop);
        this.whole = least > LEAST;
        this.half = whole && least < 1 - LEAST;
        this.shown = whole ? everything : Region.empty(Space.PAGE);
    }

    /** The mask that was painted. */
    PdfMask mask() {
        if (unknown) {
            return PdfMask.UNKNOWN;
        }
        if (whole) {
            return half ? PdfMask.UNKNOWN : PdfMask.NONE;
        }
        try {
            showAll();
        } catch (IllegalArgumentException e) {
            return PdfMask.UNKNOWN;
        }
        List<ClipShape<PagePoint>> shapes =
                shown.isEmpty() ? List.of() : List.of(new ClipShape<>(shown.outline(), FillRule.EVEN_ODD));
        return new PdfMask(Optional.of(shapes), half);
    }

    @Override
    public void area(VectorPath<PagePoint> path, FillRule rule, Clip<PagePoint> clip, AreaPaint paint, PdfInk ink) {
        Optional<VisibleArea> visible = clip.visibleArea(path, rule, MOST_EDGES);
        if (visible.isEmpty() || unknown) {
            return;
        }
        if (++areas > MOST_AREAS) {
            unknown = true;
            return;
        }
        double stated = value.applyAsDouble(ink);
        double through = Double.isNaN(stated) ? 0.5 : transfer.applyAsDouble(stated);
        half |= through > LEAST && through < 1 - LEAST;
        try {
            if (through > LEAST) {
                toShow.add(region(visible.get()));
            } else {
                showAll();
                whole = false;
                shown = shown.minus(region(visible.get()));
            }
        } catch (IllegalArgumentException e) {
            unknown = true; // crosses itself too often
        }
    }

    private void showAll() {
        if (!toShow.isEmpty() && !whole) {
            toShow.add(shown);
            shown = Region.union(Space.PAGE, toShow);
        }
        toShow.clear();
    }

    private Region<PagePoint> region(VisibleArea area) {
        Region<PagePoint> region = region(area.outline()).within(everything);
        for (List<FlatOutline> through : area.through()) {
            region = region.within(Region.union(
                    Space.PAGE, through.stream().map(PdfMaskMarks::region).toList()));
        }
        return region;
    }

    private static Region<PagePoint> region(FlatOutline outline) {
        VectorPath.Builder<PagePoint> path = VectorPath.in(Space.PAGE);
        double x = Double.NaN;
        double y = Double.NaN;
        for (int k = 0; k < outline.edges(); k++) {
            if (outline.x0(k) != x || outline.y0(k) != y) {
                path.moveTo(outline.x0(k), outline.y0(k));
            }
            x = outline.x1(k);
            y = outline.y1(k);
            path.lineTo(x, y);
        }
        return outline.rule() == FillRule.EVEN_ODD
                ? Region.evenOdd(path.build(), LEAST)
                : Region.nonZero(path.build(), LEAST);
    }

    @Override
    public void stroke(VectorPath<PagePoint> path, Clip<PagePoint> clip, StrokeStyle style, Optional<String> layer) {
        unknown = true;
    }

    @Override
    public boolean filled(
            VectorPath<PagePoint> path,
            FillRule rule,
            Clip<PagePoint> clip,
            AreaPaint paint,
            PdfInk ink,
            FillLook look) {
        area(path, rule, clip, paint, ink);
        return false;
    }

    @Override
    public void leftOut(LeftOut.Kind kind) {
        unknown = true;
    }

    @Override
    public void halfShown() {
        half = true;
    }

    @Override
    public int strokes() {
        return 0;
    }
}
