package org.adumbrate.linework.cover;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.Hidden;
import org.adumbrate.linework.Stroke;
import org.adumbrate.linework.clip.PathCutter;
import org.adumbrate.linework.clip.TooIntricateException;

/**
 * Strokes less what is painted over them.
 *
 * @param seen what is seen of the strokes, in their order; those that are seen whole are the same as before
 * @param hidden how much is not
 */
public record HiddenLines(List<Stroke> seen, Hidden hidden) {
    /** Copies the list. */
    public HiddenLines {
        seen = List.copyOf(seen);
    }

    /**
     * Takes from strokes what covers hide. A line along the rim of a cover, to within 0.01 mm, is seen; what is left of a stroke that is
     * cut and is shorter than 0.05 mm is dropped. Curves are split without changing their course.
     *
     * @param strokes in the order of painting
     * @param covers in the order of painting
     * @throws TooIntricateException if that takes more work than any drawing's
     */
    public static HiddenLines taken(List<Stroke> strokes, List<Cover> covers) {
        if (covers.isEmpty() || strokes.isEmpty()) {
            return new HiddenLines(strokes, Hidden.NOTHING);
        }
        CoverIndex index = new CoverIndex(covers);
        LinesBehind sight = new LinesBehind(index);
        List<Stroke> seen = new ArrayList<>(strokes.size());
        int whole = 0;
        int part = 0;
        double lengthMm = 0;
        for (int k = 0; k < strokes.size(); k++) {
            Stroke stroke = strokes.get(k);
            sight.lookAt(k);
            VectorPath<PagePoint> path = k < index.end() ? PathCutter.cut(stroke.path(), sight) : stroke.path();
            if (path.equals(stroke.path())) {
                seen.add(stroke);
                continue;
            }
            lengthMm += stroke.path().length() - path.length();
            if (path.isEmpty()) {
                whole++;
            } else {
                part++;
                seen.add(stroke.along(path));
            }
        }
        return new HiddenLines(seen, new Hidden(whole, part, lengthMm));
    }
}
