package org.adumbrate.linework.svg;

import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.page.AreaPaint;
import org.adumbrate.linework.page.StrokeCollector;
import org.w3c.dom.Element;

/** Keeps what an SVG strokes, and what it fills as that which hides strokes. */
final class SvgStrokes implements SvgCanvas {
    private final SvgDocument document;
    private final StrokeCollector found;

    SvgStrokes(SvgDocument document, StrokeCollector found) {
        this.document = document;
        this.found = found;
    }

    @Override
    public void shape(VectorPath<PagePoint> outline, SvgScene scene) throws InputFault {
        SvgStyle style = scene.style();
        PaintValue stroke = style.stroke();
        boolean taken = stroke.kind() == PaintValue.Kind.COLOR;
        if (style.isFilled()) {
            fill(outline, scene, taken);
        }
        if (taken) {
            double scale =
                    style.scalesStroke() ? Math.sqrt(Math.abs(scene.toPage().getDeterminant())) : SvgLength.MM_PER_PX;
            found.stroke(
                    outline, scene.clip(), style.strokeStyle(stroke.color(), scale, scene.diagonal()), scene.layer());
        } else if (stroke.kind() == PaintValue.Kind.SERVER) {
            found.leftOut(LeftOut.Kind.UNCOLORED_STROKE);
        }
    }

    private void fill(VectorPath<PagePoint> outline, SvgScene scene, boolean outlined) {
        SvgStyle style = scene.style();
        PaintValue fill = style.fill();
        if (fill.kind() == PaintValue.Kind.SERVER) {
            boolean solid = style.fillServerId()
                    .flatMap(document::element)
                    .filter(server -> SvgGradients.isSolid(server, document))
                    .isPresent();
            area(outline, scene, LeftOut.Kind.SHADING, solid);
        } else {
            area(outline, scene, AreaPaint.kind(AreaPaint.isWhite(fill.color()), outlined), fill.solid());
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
    public int painted() {
        return found.strokes();
    }
}
