package org.adumbrate.linework.outline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.clip.FillRule;

/**
 * A filled path read as lines as far as it can be.
 *
 * @param lines the shapes that can be read as lines: thin and of constant width, whatever else there is on the page
 * @param rest the runs of the path that cannot
 */
public record OutlinedLines(List<OutlinedLine> lines, VectorPath<PagePoint> rest) {
    /** Copies the list. */
    public OutlinedLines {
        lines = List.copyOf(lines);
    }

    /** Reads a filled path, every run of which counts as closed. */
    public static OutlinedLines of(VectorPath<PagePoint> path, FillRule rule) {
        List<Rim> rims = RimReader.of(path);
        if (rims.size() == 1) {
            Optional<OutlinedLine> line = single(rims.get(0), path);
            return new OutlinedLines(
                    line.stream().toList(),
                    line.isEmpty() ? path : VectorPath.in(Space.PAGE).build());
        }
        List<OutlinedLine> lines = new ArrayList<>();
        List<List<Rim>> others = new ArrayList<>();
        for (List<Rim> shape : NestedRims.shapes(rims, rule)) {
            VectorPath<PagePoint> outline = outline(shape);
            Optional<OutlinedLine> line =
                    shape.size() == 1 ? single(shape.get(0), outline) : MiddleFinder.of(turned(shape), outline);
            line.ifPresentOrElse(lines::add, () -> others.add(shape));
        }
        VectorPath.Builder<PagePoint> rest = VectorPath.in(Space.PAGE);
        for (int k = 0; k < others.size(); k++) {
            Optional<OutlinedLine> loop =
                    k + 1 < others.size() ? loop(others.get(k), others.get(k + 1)) : Optional.empty();
            if (loop.isPresent()) {
                lines.add(loop.get());
                k++;
            } else {
                outline(others.get(k)).visit(rest);
            }
        }
        return new OutlinedLines(lines, rest.build());
    }

    /** A line that closes and crosses itself has two rims that cross each other, one drawn the other way round. */
    private static Optional<OutlinedLine> loop(List<Rim> first, List<Rim> second) {
        if (first.size() > 1 || second.size() > 1) {
            return Optional.empty();
        }
        List<Rim> rims = List.of(first.get(0), second.get(0));
        boolean positive = rims.get(0).area() + rims.get(1).area() > 0;
        List<Rim> turned = positive ? rims : rims.stream().map(Rim::reversed).toList();
        return MiddleFinder.of(turned, outline(rims));
    }

    private static Optional<OutlinedLine> single(Rim rim, VectorPath<PagePoint> outline) {
        return rim.size() == 4 ? ThinQuad.of(rim, outline) : rim.size() < 4 ? Optional.empty() : general(rim, outline);
    }

    private static Optional<OutlinedLine> general(Rim rim, VectorPath<PagePoint> outline) {
        return Capsule.of(rim, outline).or(() -> MiddleFinder.of(turned(List.of(rim)), outline));
    }

    /** The first rim turned so that the shape lies within it, the others so that it lies around them. */
    private static List<Rim> turned(List<Rim> shape) {
        List<Rim> turned = new ArrayList<>();
        for (Rim rim : shape) {
            boolean positive = rim.area() > 0;
            turned.add(positive == turned.isEmpty() ? rim : rim.reversed());
        }
        return turned;
    }

    private static VectorPath<PagePoint> outline(List<Rim> shape) {
        if (shape.size() == 1) {
            return shape.get(0).path();
        }
        VectorPath.Builder<PagePoint> path = VectorPath.in(Space.PAGE);
        shape.forEach(rim -> rim.path().visit(path));
        return path.build();
    }
}
