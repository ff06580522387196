package org.adumbrate.linework.svg;

import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.page.AreaPaint;
import org.adumbrate.linework.page.FillLook;
import org.adumbrate.linework.page.PenScale;
import org.adumbrate.linework.page.StrokeCollector;
import org.adumbrate.linework.page.StrokeStyle;
import org.adumbrate.linework.svg.css.CssLength;
import org.w3c.dom.Element;

/** Keeps what an SVG strokes, and what it fills as that which hides strokes. */
final class SvgStrokes implements SvgCanvas {
    private final SvgDocument document;
    private final StrokeCollector found;
    private final SvgPaints paints;

    SvgStrokes(SvgDocument document, StrokeCollector found) {
        this.document = document;
        this.found = found;
        this.paints = new SvgPaints(document);
    }

    @Override
    public void shape(VectorPath<PagePoint> outline, SvgScene scene) throws InputFault {
        SvgStyle style = scene.style();
        SvgPaint stroke = paint(style.stroke(), outline, scene);
        if (style.paintOrder().strokeFirst()) {
            stroke(stroke, outline, scene);
            fill(outline, scene, stroke);
            if (isTaken(stroke) && style.isFilled()) {
                // it covers the inner half of its own outline, which is taken in its full width
                found.leftOut(LeftOut.Kind.EFFECT);
            }
        } else {
            boolean done = fill(outline, scene, stroke);
            if (!done) {
                stroke(stroke, outline, scene);
            }
        }
    }

    private SvgPaint paint(PaintValue value, VectorPath<PagePoint> outline, SvgScene scene) {
        if (SvgReference.leadsOutside(value.server())) {
            found.leftOut(LeftOut.Kind.OUTSIDE);
        }
        return paints.of(value, outline, scene);
    }

    private static boolean isTaken(SvgPaint stroke) {
        return stroke.kind() == SvgPaint.Kind.COLOR || stroke.kind() == SvgPaint.Kind.GRADIENT;
    }

    private void stroke(SvgPaint paint, VectorPath<PagePoint> outline, SvgScene scene) throws InputFault {
        if (isTaken(paint)) {
            int before = found.strokes();
            found.stroke(outline, scene.clip(), strokeStyle(paint, scene), scene.layer());
            if (found.strokes() > before) {
                tell(paint, scene);
                if (pen(scene).distorts()) {
                    found.leftOut(LeftOut.Kind.DISTORTED_STROKE);
                }
            }
        } else if (paint.kind() == SvgPaint.Kind.PATTERN || paint.kind() == SvgPaint.Kind.BROKEN) {
            found.leftOut(LeftOut.Kind.UNCOLORED_STROKE);
        }
    }

    private static StrokeStyle strokeStyle(SvgPaint paint, SvgScene scene) {
        return SvgLengths.stroke(scene.style(), paint.color().srgb(), pen(scene).mean(), scene.diagonal());
    }

    private static PenScale pen(SvgScene scene) {
        return scene.style().scalesStroke() ? PenScale.of(scene.toPage()) : new PenScale(CssLength.MM_PER_PX, 1);
    }

    private void tell(SvgPaint paint, SvgScene scene) {
        if (paint.kind() == SvgPaint.Kind.GRADIENT) {
            found.leftOut(LeftOut.Kind.GRADIENT_STROKE);
        } else if (!isSolid(paint, scene.style().isStrokeSolid(), scene)) {
            found.leftOut(LeftOut.Kind.FAINT_STROKE);
        }
    }

    private static boolean isSolid(SvgPaint paint, boolean styled, SvgScene scene) {
        return paint.solid() && styled && !scene.faint();
    }

    /** Fills a shape; tells whether the stroke around it is taken, too. */
    private boolean fill(VectorPath<PagePoint> outline, SvgScene scene, SvgPaint stroke) throws InputFault {
        SvgStyle style = scene.style();
        SvgPaint fill = paint(style.fill(), outline, scene);
        if (fill.isNone()) {
            return false;
        }
        boolean white = AreaPaint.isWhite(fill.color().srgb());
        boolean colored = fill.kind() == SvgPaint.Kind.COLOR;
        AreaPaint paint = new AreaPaint(
                colored ? AreaPaint.kind(white, isTaken(stroke)) : LeftOut.Kind.SHADING,
                fill.solid() && style.isFillSolid(),
                scene.since());
        boolean strokedBefore = style.paintOrder().strokeFirst() && isTaken(stroke);
        if (!colored || strokedBefore) {
            found.area(outline, style.fillRule(), scene.clip(), paint);
            return false;
        }
        Optional<StrokeStyle> around = isTaken(stroke) ? Optional.of(strokeStyle(stroke, scene)) : Optional.empty();
        boolean faint = !isSolid(fill, style.isFillSolid(), scene);
        FillLook look = new FillLook(fill.color().srgb(), around, scene.layer(), faint);
        return found.filled(outline, style.fillRule(), scene.clip(), paint, look);
    }

    @Override
    public void mark(Element element, SvgScene scene) {
        switch (element.getLocalName()) {
            case "text" -> found.leftOut(LeftOut.Kind.TEXT);
            case "image" ->
                found.area(
                        SvgImages.outline(element, document, scene),
                        FillRule.NON_ZERO,
                        scene.clip(),
                        new AreaPaint(LeftOut.Kind.IMAGE, SvgImages.isSolid(element, document), scene.since()));
            default -> found.leftOut(LeftOut.Kind.OTHER);
        }
    }

    @Override
    public void told(LeftOut.Kind kind) {
        found.leftOut(kind);
    }

    @Override
    public int painted() {
        return found.strokes();
    }
}
