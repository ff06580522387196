package org.adumbrate.linework.svg;

import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.page.StrokeCollector;

/** Keeps what an SVG strokes; its fills are only counted. */
final class SvgStrokes implements SvgCanvas {
    private final StrokeCollector found;

    SvgStrokes(StrokeCollector found) {
        this.found = found;
    }

    @Override
    public void shape(VectorPath<PagePoint> outline, SvgScene scene) throws InputFault {
        SvgStyle style = scene.style();
        PaintValue stroke = style.stroke();
        if (stroke.kind() == PaintValue.Kind.COLOR) {
            double scale =
                    style.scalesStroke() ? Math.sqrt(Math.abs(scene.toPage().getDeterminant())) : SvgLength.MM_PER_PX;
            found.stroke(
                    outline, scene.clip(), style.strokeStyle(stroke.color(), scale, scene.diagonal()), scene.layer());
        } else if (stroke.kind() == PaintValue.Kind.SERVER || style.isFilled()) {
            found.leftOut(org.adumbrate.linework.LeftOut.Kind.OTHER);
        }
    }

    @Override
    public void otherMark() {
        found.leftOut(org.adumbrate.linework.LeftOut.Kind.OTHER);
    }
}
