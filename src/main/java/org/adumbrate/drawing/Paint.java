package org.adumbrate.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;

/**
 * What is put down at one go: lines with one pen, or one fill. The marks of a layer as every kind of drawing makes them,
 * so that all agree.
 *
 * <p>Areas that follow each other and look alike are one fill: where they meet no seam shows, and where they overlap they
 * cover once. All their outlines go round the same way and holes the other way, so the nonzero rule fills what any covers.
 *
 * @param color its colour
 * @param opacity how much it covers, above 0 to 1; lines cover wholly
 * @param pen what lines are drawn with; none for a fill
 * @param paths each line, or all outlines of a fill
 */
record Paint(Srgb color, double opacity, Optional<Pen> pen, List<VectorPath<SheetPoint>> paths) {

    /** The paints of a layer in drawing order; what would leave no trace is left out. */
    static List<Paint> of(Layer layer) {
        return of(layer.marks());
    }

    /** The same of some marks that follow each other. */
    static List<Paint> of(List<Mark> marks) {
        List<Paint> paints = new ArrayList<>();
        for (Mark mark : marks) {
            Paint next = mark instanceof Mark.Lines lines ? lines(lines) : fill((Mark.Area) mark);
            Paint last = paints.isEmpty() ? null : paints.get(paints.size() - 1);
            if (next.paths.isEmpty() || next.opacity == 0) {
                continue;
            }
            if (last != null && last.joins(next)) {
                last.paths.addAll(next.paths);
            } else {
                paints.add(new Paint(next.color, next.opacity, next.pen, new ArrayList<>(next.paths)));
            }
        }
        return paints;
    }

    /** Whether anything would be seen of a mark. */
    static boolean leavesTrace(Mark mark) {
        if (mark instanceof Mark.Area area) {
            return area.opacity() > 0 && !area.region().isEmpty();
        }
        return ((Mark.Lines) mark).paths().stream().anyMatch(path -> !path.isEmpty());
    }

    /** The colour of a mark. */
    static Srgb colorOf(Mark mark) {
        return mark instanceof Mark.Lines lines ? lines.pen().ink() : ((Mark.Area) mark).fill();
    }

    private static Paint lines(Mark.Lines lines) {
        List<VectorPath<SheetPoint>> drawn =
                lines.paths().stream().filter(path -> !path.isEmpty()).toList();
        return new Paint(lines.pen().ink(), 1, Optional.of(lines.pen()), drawn);
    }

    private static Paint fill(Mark.Area area) {
        List<VectorPath<SheetPoint>> outline =
                area.region().isEmpty() ? List.of() : List.of(area.region().outline());
        return new Paint(area.fill(), area.opacity(), Optional.empty(), outline);
    }

    private boolean joins(Paint next) {
        return color.equals(next.color) && opacity == next.opacity && pen.equals(next.pen);
    }

    /** True for the same paths drawn alike. */
    boolean isSame(Paint other) {
        return joins(other) && hasSamePaths(other);
    }

    /** True for the same paths, however they are drawn. */
    boolean hasSamePaths(Paint other) {
        return isFill() == other.isFill() && paths.equals(other.paths);
    }

    /** True if both are one translucent fill where they follow each other. */
    boolean fadesWith(Paint next) {
        return isFill() && opacity < 1 && joins(next);
    }

    /** The same, covering wholly. */
    Paint opaque() {
        return new Paint(color, 1, pen, paths);
    }

    boolean isFill() {
        return pen.isEmpty();
    }
}
