package org.adumbrate.linework.cover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.Stroke;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.clip.FillRule;

/** What is painted one after the other on a page of 400 x 400 mm. */
final class Painting {
    private static final int MOST_EDGES = 1_000_000;

    private final List<Stroke> strokes = new ArrayList<>();
    private final List<Cover> covers = new ArrayList<>();
    private final Clip<PagePoint> page = Clip.rectangle(0, 0, 400, 400);

    /** A stroke whose colour is its number. */
    Painting stroke(VectorPath<PagePoint> path) {
        Srgb number = new Srgb(0, strokes.size() / 256, strokes.size() % 256);
        strokes.add(
                new Stroke(path, number, 0.25, Dash.NONE, LineCap.BUTT, LineJoin.MITER, /* layer= */ Optional.empty()));
        return this;
    }

    Painting cover(VectorPath<PagePoint> path, FillRule rule) {
        return cover(path, rule, page);
    }

    Painting cover(VectorPath<PagePoint> path, FillRule rule, Clip<PagePoint> clip) {
        clip.visibleArea(path, rule, MOST_EDGES)
                .ifPresent(area -> covers.add(new Cover(area, /* since= */ 0, strokes.size())));
        return this;
    }

    HiddenLines seen() {
        return HiddenLines.taken(strokes, covers);
    }

    /** What is seen of the stroke of a number. */
    Optional<VectorPath<PagePoint>> seenOf(HiddenLines lines, int number) {
        Srgb color = strokes.get(number).color();
        return lines.seen().stream()
                .filter(stroke -> stroke.color().equals(color))
                .map(Stroke::path)
                .findFirst();
    }

    List<VectorPath<PagePoint>> paths() {
        return seen().seen().stream().map(Stroke::path).toList();
    }
}
