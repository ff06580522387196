package org.adumbrate.linework.svg;

import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.page.AreaPaint;
import org.adumbrate.linework.page.PenScale;
import org.adumbrate.linework.page.StrokeCollector;
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
            fill(outline, scene, isTaken(stroke));
            if (isTaken(stroke) && style.isFilled()) {
                // it covers the inner half of its own outline, which is taken in its full width
                found.leftOut(LeftOut.Kind.EFFECT);
            }
        } else {
            fill(outline, scene, isTaken(stroke));
            stroke(stroke, outline, scene);
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
        SvgStyle style = scene.style();
        if (isTaken(paint)) {
            PenScale pen = style.scalesStroke() ? PenScale.of(scene.toPage()) : new PenScale(CssLength.MM_PER_PX, 1);
            int before = found.strokes();
            found.stroke(
                    outline,
                    scene.clip(),
                    SvgLengths.stroke(style, paint.color().srgb(), pen.mean(), scene.diagonal()),
                    scene.layer());
            if (found.strokes() > before) {
                tell(paint, scene);
                if (pen.distorts()) {
                    found.leftOut(LeftOut.Kind.DISTORTED_STROKE);
                }
            }
        } else if (paint.kind() == SvgPaint.Kind.PATTERN || paint.kind() == SvgPaint.Kind.BROKEN) {
            found.leftOut(LeftOut.Kind.UNCOLORED_STROKE);
        }
    }

    private void tell(SvgPaint paint, SvgScene scene) {
        if (paint.kind() == SvgPaint.Kind.GRADIENT) {
            found.leftOut(LeftOut.Kind.GRADIENT_STROKE);
        } else if (!paint.solid() || !scene.style().isStrokeSolid() || scene.faint()) {
            found.leftOut(LeftOut.Kind.FAINT_STROKE);
        }
    }

    private void fill(VectorPath<PagePoint> outline, SvgScene scene, boolean outlined) {
        SvgPaint fill = paint(scene.style().fill(), outline, scene);
        switch (fill.kind()) {
            case NONE, BROKEN -> {
                // nothing is painted
            }
            case COLOR ->
                area(
                        outline,
                        scene,
                        AreaPaint.kind(AreaPaint.isWhite(fill.color().srgb()), outlined),
                        fill.solid());
            case GRADIENT, PATTERN -> area(outline, scene, LeftOut.Kind.SHADING, fill.solid());
        }
    }

    private void area(VectorPath<PagePoint> outline, SvgScene scene, LeftOut.Kind kind, boolean solid) {
        SvgStyle style = scene.style();
        found.area(
                outline,
                style.fillRule(),
                scene.clip(),
                new AreaPaint(kind, solid && style.isFillSolid(), scene.since()));
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
