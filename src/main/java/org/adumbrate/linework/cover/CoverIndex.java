package org.adumbrate.linework.cover;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.adumbrate.geometry.BoxIndex;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.linework.clip.FlatOutline;

/** Finds the covers that a piece of a stroke may lie behind. */
final class CoverIndex {
    private final List<CoveringArea> areas = new ArrayList<>();
    private final BoxIndex boxes;
    private final int last;

    /** @param covers in the order of painting */
    CoverIndex(List<Cover> covers) {
        Map<FlatOutline, EdgeTree> clips = CoveringArea.noClips();
        for (Cover cover : covers) {
            CoveringArea.of(cover, clips).ifPresent(areas::add);
        }
        this.boxes = BoxIndex.of(areas.stream().map(CoveringArea::box).toList());
        this.last = areas.stream().mapToInt(CoveringArea::until).max().orElse(0);
    }

    /** The number of the first stroke that nothing is painted over. */
    int end() {
        return last;
    }

    /** What may hide a piece of the stroke of a number, the last painted first. */
    CoveringArea[] over(PathPiece piece, int stroke) {
        Extent box = box(piece);
        int[] touching = boxes.touching(box.left(), box.top(), box.right(), box.bottom());
        CoveringArea[] found = new CoveringArea[touching.length];
        int count = 0;
        for (int k = touching.length - 1; k >= 0; k--) {
            CoveringArea area = areas.get(touching[k]);
            if (area.follows(stroke)) {
                found[count++] = area;
            }
        }
        return Arrays.copyOf(found, count);
    }

    private static Extent box(PathPiece p) {
        return new Extent(
                        Math.min(Math.min(p.x0(), p.x1()), Math.min(p.x2(), p.x3())),
                        Math.min(Math.min(p.y0(), p.y1()), Math.min(p.y2(), p.y3())),
                        Math.max(Math.max(p.x0(), p.x1()), Math.max(p.x2(), p.x3())),
                        Math.max(Math.max(p.y0(), p.y1()), Math.max(p.y2(), p.y3())))
                .grown(LinesBehind.RIM_MM);
    }
}
