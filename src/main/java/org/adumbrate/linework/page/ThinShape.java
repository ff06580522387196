package org.adumbrate.linework.page;

import java.util.Optional;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.Stroke;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.clip.VisibleArea;
import org.adumbrate.linework.cover.Cover;
import org.adumbrate.linework.outline.OutlinedLine;

/**
 * A filled shape that may be a line; which it is shows when the whole page is known.
 *
 * @param stroke the number that it has among the strokes
 * @param line the shape
 * @param rule what counts as its inside
 * @param clip through what it is seen
 * @param paint how it is painted, should it be an area
 * @param look how it looks
 */
record ThinShape(int stroke, OutlinedLine line, FillRule rule, Clip<PagePoint> clip, AreaPaint paint, FillLook look) {
    private static final int MOST_EDGES = 1_000_000;

    /** It as a line, read in one way or the other; nothing if the clip hides that. */
    Optional<Stroke> stroke(OutlinedLine read) {
        double widthMm = read.widthMm() + look.outlineMm();
        return stroke(read.middle(), new StrokeStyle(look.color(), widthMm, Dash.NONE, read.cap(), LineJoin.MITER));
    }

    /** What is stroked around it, should it be an area. */
    Optional<Stroke> outlineStroke() {
        return look.outline().flatMap(style -> stroke(line.outline(), style));
    }

    private Optional<Stroke> stroke(VectorPath<PagePoint> path, StrokeStyle style) {
        VectorPath<PagePoint> visible = clip.visible(path);
        return visible.isEmpty() ? Optional.empty() : Optional.of(style.stroke(visible, look.layer()));
    }

    /** It as an area, which is counted; what it covers, if it covers anything. */
    Optional<Cover> cover(LeftOutTally leftOut) {
        Optional<VisibleArea> visible = clip.visibleArea(line.outline(), rule, MOST_EDGES);
        visible.ifPresent(area -> leftOut.add(paint.kind(), area.mm2()));
        return visible.filter(area -> paint.covers() && paint.since() < stroke)
                .map(area -> new Cover(area, paint.since(), stroke));
    }
}
