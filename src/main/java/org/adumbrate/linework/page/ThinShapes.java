package org.adumbrate.linework.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.Recovered;
import org.adumbrate.linework.Stroke;
import org.adumbrate.linework.clip.FlatOutline;
import org.adumbrate.linework.cover.Cover;
import org.adumbrate.linework.outline.LineOrArea;
import org.adumbrate.linework.outline.OutlinedLine;
import org.adumbrate.linework.outline.SharedSides;

/**
 * The thin shapes of a page. Each is a line or an area, which shows when all of them are known; until then each is numbered among
 * the strokes.
 */
final class ThinShapes {
    private final List<ThinShape> shapes = new ArrayList<>();

    /** What a page's strokes and covers are when it is settled which thin shapes are lines. */
    record Settled(List<Stroke> strokes, List<Cover> covers, Recovered recovered) {}

    void add(ThinShape shape) {
        shapes.add(shape);
    }

    /**
     * Settles it.
     *
     * @param painted strokes in the order of painting, thin shapes among them
     * @param covers areas that cover
     * @param areas the outlines of all areas
     * @param leftOut counts thin shapes that are areas, and lines that are faint
     */
    Settled settle(List<Stroke> painted, List<Cover> covers, List<FlatOutline> areas, LeftOutTally leftOut) {
        if (shapes.isEmpty()) {
            return new Settled(painted, covers, Recovered.NOTHING);
        }
        List<OutlinedLine> outlines = shapes.stream().map(ThinShape::line).toList();
        SharedSides sides = sides(outlines, painted, areas);
        LineOrArea judge = new LineOrArea(
                outlines, shapes.stream().map(shape -> shape.look().color()).toList(), sides);
        List<Optional<Stroke>> strokes =
                new ArrayList<>(painted.stream().map(Optional::of).toList());
        List<Cover> all = new ArrayList<>(covers);
        int wide = 0;
        double widestMm = 0;
        int left = 0;
        for (int k = 0; k < shapes.size(); k++) {
            ThinShape shape = shapes.get(k);
            Optional<OutlinedLine> line = judge.line(shape.line(), shape.look().color(), sides.isShared(k));
            if (line.isEmpty()) {
                left += sides.isShared(k) ? 0 : 1;
                strokes.set(shape.stroke(), shape.outlineStroke());
                shape.cover(leftOut).ifPresent(all::add);
                continue;
            }
            strokes.set(shape.stroke(), shape.stroke(line.get()));
            if (shape.look().faint()) {
                leftOut.add(LeftOut.Kind.FAINT_STROKE, 0);
            }
            if (line.get().widthMm() > LineOrArea.WIDE_MM) {
                wide++;
                widestMm = Math.max(widestMm, line.get().widthMm());
            }
        }
        all.sort(Comparator.comparingInt(Cover::until));
        int lines = shapes.size()
                - (int) shapes.stream()
                        .filter(shape -> strokes.get(shape.stroke()).isEmpty())
                        .count();
        return renumbered(strokes, all, new Recovered(lines, wide, widestMm, left, /* dashes= */ 0, /* dashed= */ 0));
    }

    private SharedSides sides(List<OutlinedLine> outlines, List<Stroke> painted, List<FlatOutline> areas) {
        SharedSides sides = new SharedSides(outlines);
        if (sides.isEmpty()) {
            return sides;
        }
        for (FlatOutline area : areas) {
            for (int k = 0; k < area.edges(); k++) {
                sides.edge(area.x0(k), area.y0(k), area.x1(k), area.y1(k));
            }
        }
        boolean[] thin = new boolean[painted.size()];
        shapes.forEach(shape -> thin[shape.stroke()] = true);
        for (int k = 0; k < thin.length; k++) {
            if (!thin[k]) {
                painted.get(k).path().pieces(piece -> {
                    if (piece.straight()) {
                        sides.stroke(piece.x0(), piece.y0(), piece.x3(), piece.y3());
                    }
                });
            }
        }
        return sides;
    }

    private static Settled renumbered(List<Optional<Stroke>> strokes, List<Cover> covers, Recovered recovered) {
        int[] numbers = new int[strokes.size() + 1];
        List<Stroke> kept = new ArrayList<>(strokes.size());
        for (int k = 0; k < strokes.size(); k++) {
            numbers[k] = kept.size();
            strokes.get(k).filter(stroke -> !isNothing(stroke.path())).ifPresent(kept::add);
        }
        numbers[strokes.size()] = kept.size();
        return new Settled(
                kept,
                covers.stream()
                        .map(cover -> new Cover(cover.area(), numbers[cover.since()], numbers[cover.until()]))
                        .toList(),
                recovered);
    }

    private static boolean isNothing(VectorPath<?> path) {
        return path.isEmpty();
    }
}
