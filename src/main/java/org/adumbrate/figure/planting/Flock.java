package org.adumbrate.figure.planting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.adumbrate.figure.outline.FigureOutline;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;

/** Scatters birds over the sky. */
public final class Flock {
    /** A bird leans to either side by no more than this, in radians. */
    private static final double MOST_LEAN = Math.toRadians(14);

    /** From the middle of one bird to that of another, in wingspans of the larger. */
    private static final double APART = 1.3;

    /** A place is looked for this often before a bird is left out. */
    private static final int TRIES = 400;

    private final List<FigureOutline> outlines;
    private final Region<SheetPoint> sky;
    private final double focalMm;
    private final FlockRule rule;
    private final SplitMix random;
    private final List<Bird> birds = new ArrayList<>();

    private Flock(List<FigureOutline> outlines, Region<SheetPoint> sky, double focalMm, FlockRule rule) {
        this.outlines = outlines;
        this.sky = sky;
        this.focalMm = focalMm;
        this.rule = rule;
        this.random = new SplitMix(rule.seed());
    }

    /**
     * What each bird covers, the farthest first. No bird touches the bounds of the sky or another bird; where the sky is too
     * small for all of them, there are fewer.
     *
     * @param outlines at least one, each as wide as a bird's wings
     * @param focalMm the focal length of the view at sheet scale
     * @throws IllegalArgumentException if there is no outline
     */
    public static List<Region<SheetPoint>> birds(
            List<FigureOutline> outlines, Region<SheetPoint> sky, double focalMm, FlockRule rule) {
        if (outlines.isEmpty()) {
            throw new IllegalArgumentException("a flock needs an outline");
        }
        Flock flock = new Flock(outlines, sky, focalMm, rule);
        sky.extent().ifPresent(flock::fill);
        return flock.birds.stream()
                .sorted(Comparator.comparingDouble(Bird::span))
                .map(Bird::body)
                .toList();
    }

    private void fill(Extent extent) {
        for (int bird = 0; bird < rule.count(); bird++) {
            Optional<Bird> placed = Optional.empty();
            for (int k = 0; k < TRIES && placed.isEmpty(); k++) {
                placed = flying(extent);
            }
            placed.ifPresent(birds::add);
        }
    }

    /** A bird at a place by chance; nothing if it cannot be there. */
    private Optional<Bird> flying(Extent extent) {
        SheetPoint middle = new SheetPoint(
                random.between(extent.left(), extent.right()), random.between(extent.top(), extent.bottom()));
        double span = focalMm * rule.wingspanM() / random.between(rule.nearestM(), rule.farthestM());
        double lean = random.between(-MOST_LEAN, MOST_LEAN);
        boolean mirrored = random.nextFlag();
        FigureOutline outline = outlines.get(random.below(outlines.size()));
        if (!sky.contains(middle) || birds.stream().anyMatch(bird -> bird.isNear(middle, span))) {
            return Optional.empty();
        }
        Region<SheetPoint> body = body(outline, middle, span, lean, mirrored);
        return body.minus(sky).isEmpty() ? Optional.of(new Bird(middle, span, body)) : Optional.empty();
    }

    private static Region<SheetPoint> body(
            FigureOutline outline, SheetPoint middle, double span, double lean, boolean mirrored) {
        Extent extent = outline.body().extent().orElseThrow();
        double scale = span / extent.width();
        double across = mirrored ? -scale : scale;
        double x = (extent.left() + extent.right()) / 2;
        double y = (extent.top() + extent.bottom()) / 2;
        double cos = StrictMath.cos(lean);
        double sin = StrictMath.sin(lean);
        Affine<PagePoint, SheetPoint> turned = new Affine<>(
                Space.PAGE,
                Space.SHEET,
                across * cos,
                -scale * sin,
                middle.x() - across * cos * x + scale * sin * y,
                across * sin,
                scale * cos,
                middle.y() - across * sin * x - scale * cos * y);
        return outline.body().transform(turned);
    }

    private record Bird(SheetPoint middle, double span, Region<SheetPoint> body) {
        boolean isNear(SheetPoint other, double otherSpan) {
            return middle.distanceTo(other) < APART * Math.max(span, otherSpan);
        }
    }
}
