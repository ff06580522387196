package org.adumbrate.linework.cover;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.Extent;
import org.adumbrate.linework.clip.FlatOutline;
import org.adumbrate.linework.clip.VisibleArea;

/**
 * A cover made ready to be looked at often.
 *
 * @param outline its own outline
 * @param through the clips that cut it: it covers what lies in at least one outline of each list
 * @param box what holds it
 * @param since the number of the first stroke that it may hide
 * @param until the number of the first stroke that is painted after it
 */
record CoveringArea(EdgeTree outline, List<List<EdgeTree>> through, Extent box, int since, int until) {
    /**
     * Makes a cover ready.
     *
     * @param clips what has been made ready of clips, which many covers share
     * @return nothing if it covers nothing
     */
    static Optional<CoveringArea> of(Cover cover, Map<FlatOutline, EdgeTree> clips) {
        VisibleArea area = cover.area();
        if (area.outline().edges() == 0 || cover.since() >= cover.until()) {
            return Optional.empty();
        }
        EdgeTree outline = new EdgeTree(area.outline());
        Extent all = outline.extent();
        Extent frame = area.frame();
        double left = Math.max(all.left(), frame.left());
        double top = Math.max(all.top(), frame.top());
        double right = Math.min(all.right(), frame.right());
        double bottom = Math.min(all.bottom(), frame.bottom());
        if (left >= right || top >= bottom) {
            return Optional.empty();
        }
        List<List<EdgeTree>> through = area.through().stream()
                .map(shapes -> shapes.stream()
                        .filter(shape -> shape.edges() > 0)
                        .map(shape -> clips.computeIfAbsent(shape, EdgeTree::new))
                        .toList())
                .toList();
        return Optional.of(
                new CoveringArea(outline, through, new Extent(left, top, right, bottom), cover.since(), cover.until()));
    }

    /** A place for clips made ready, told apart by identity. */
    static Map<FlatOutline, EdgeTree> noClips() {
        return new IdentityHashMap<>();
    }

    /** Whether it may hide a stroke of a number. */
    boolean follows(int stroke) {
        return since <= stroke && stroke < until;
    }

    /** Adds to some stretches those on which it covers a line. */
    void cover(Flank line, EdgeCrossings crossings, Spans to) {
        if (through.isEmpty()) {
            outline.inside(line, crossings, to);
            return;
        }
        Spans within = new Spans(LinesBehind.SEAM_MM);
        outline.inside(line, crossings, within);
        for (int k = 0; k < through.size() && within.size() > 0; k++) {
            Spans seen = new Spans(LinesBehind.SEAM_MM);
            through.get(k).forEach(shape -> shape.inside(line, crossings, seen));
            Spans both = new Spans(LinesBehind.SEAM_MM);
            both.addCommon(within, seen);
            within = both;
        }
        for (int k = 0; k < within.size(); k++) {
            to.add(within.from(k), within.to(k));
        }
    }
}
