package org.adumbrate.linework.clip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.PlanePoint;
import org.adumbrate.geometry.VectorPath;

/**
 * The part of a plane, measured in mm, in which lines are visible; immutable.
 *
 * @param <P> the plane
 */
public final class Clip<P extends PlanePoint> {
    /** Files that clip deeper than this go round in circles. */
    private static final int DEEPEST = 1000;

    /** All clips within each other together; each edge takes some 100 bytes. */
    private static final int MOST_EDGES = 400_000;

    private final Window window;
    private final List<Aperture> apertures;
    private final int edges;
    private final Effort effort;

    private Clip(Window window, List<Aperture> apertures, int edges, Effort effort) {
        this.window = window;
        this.apertures = apertures;
        this.edges = edges;
        this.effort = effort;
    }

    /** An upright rectangle. */
    public static <P extends PlanePoint> Clip<P> rectangle(double left, double top, double right, double bottom) {
        return new Clip<>(new Window(left, top, right, bottom), List.of(), 0, new Effort());
    }

    /**
     * What of this clip lies within an outline, each of whose runs counts as closed.
     *
     * @throws TooIntricateException if the outline is too intricate to clip by
     */
    public Clip<P> within(VectorPath<P> outline, FillRule rule) {
        return withinAny(List.of(new ClipShape<>(outline, rule)));
    }

    /**
     * What of this clip lies within any of several shapes.
     *
     * @throws TooIntricateException if an outline is too intricate to clip by
     */
    public Clip<P> withinAny(List<ClipShape<P>> shapes) {
        List<Aperture> inner = new ArrayList<>();
        int all = edges;
        for (ClipShape<P> shape : shapes) {
            Optional<Window> rectangle = Window.drawnBy(shape.outline());
            Aperture aperture = rectangle.isPresent()
                    ? rectangle.get()
                    : new OutlineAperture(shape.outline(), shape.rule(), effort);
            inner.add(aperture);
            all += aperture instanceof OutlineAperture outline ? outline.edges() : 0;
            if (apertures.size() >= DEEPEST || all > MOST_EDGES) {
                throw new TooIntricateException("has clips that lie within each other deeper than " + DEEPEST
                        + " or with more than " + MOST_EDGES + " edges");
            }
        }
        if (inner.size() == 1 && inner.get(0) instanceof Window rectangle) {
            return new Clip<>(window.intersection(rectangle), apertures, edges, effort);
        }
        effort.spend(apertures.size());
        List<Aperture> more = new ArrayList<>(apertures);
        more.add(inner.size() == 1 ? inner.get(0) : new Union(List.copyOf(inner)));
        return new Clip<>(window, List.copyOf(more), all, effort);
    }

    /**
     * What is visible of a path: the very same path if all of it is, an empty one if nothing is. Straight pieces stay
     * straight, and curves are split without changing their course.
     */
    public VectorPath<P> visible(VectorPath<P> path) {
        Optional<List<Aperture>> cutting = cutting(path);
        if (cutting.isEmpty()) {
            return VectorPath.in(path.space()).build();
        }
        return cutting.get().isEmpty() ? path : PathCutter.cut(path, new ThroughApertures(cutting.get()));
    }

    /** A rectangle that holds what is visible of what lies within a path; nothing if nothing is. */
    public Optional<Extent> reach(VectorPath<P> path) {
        return path.extent()
                .filter(box -> box.left() <= window.right()
                        && box.right() >= window.left()
                        && box.top() <= window.bottom()
                        && box.bottom() >= window.top())
                .map(box -> new Extent(
                        Math.max(box.left(), window.left()),
                        Math.max(box.top(), window.top()),
                        Math.min(box.right(), window.right()),
                        Math.min(box.bottom(), window.bottom())));
    }

    /**
     * The area within a path, as far as this clip lets it be seen.
     *
     * @return nothing if it hides all of it
     * @param mostEdges how many edges the area may have
     * @throws TooIntricateException if it has more
     */
    public Optional<VisibleArea> visibleArea(VectorPath<P> path, FillRule rule, int mostEdges) {
        if (path.isEmpty()) {
            return Optional.empty();
        }
        return cutting(path)
                .map(cutting -> new VisibleArea(
                        FlatOutline.of(path, rule, mostEdges),
                        cutting.stream().map(Aperture::outlines).toList(),
                        new Extent(window.left(), window.top(), window.right(), window.bottom())));
    }

    /** What is cut by of that which makes up this clip; nothing if the path lies outside. */
    private Optional<List<Aperture>> cutting(VectorPath<P> path) {
        effort.spend(apertures.size());
        Bounds box = Bounds.of(path);
        List<Aperture> cutting = new ArrayList<>();
        Aperture.Coverage coverage = window.coverage(box);
        if (coverage == Aperture.Coverage.PART) {
            cutting.add(window);
        }
        for (int k = 0; k < apertures.size() && coverage != Aperture.Coverage.NOTHING; k++) {
            coverage = apertures.get(k).coverage(box);
            if (coverage == Aperture.Coverage.PART) {
                cutting.add(apertures.get(k));
            }
        }
        return coverage == Aperture.Coverage.NOTHING ? Optional.empty() : Optional.of(cutting);
    }
}
