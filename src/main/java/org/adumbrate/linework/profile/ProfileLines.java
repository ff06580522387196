package org.adumbrate.linework.profile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.cleanup.CleanUp;
import org.adumbrate.linework.cleanup.CleanUpSettings;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineSegment;

/**
 * The outline of the building in the view: the building's own lines where they bound what it covers, to be drawn once more,
 * heavier.
 *
 * <p>What the building covers is everything that its lines and the cut's enclose, inner lines, rooms and openings included.
 * Gaps are bridged to see that, small ones at any end and wide ones along a straight line that something in front interrupts;
 * bridges are not drawn. Where the outline runs along the cut's lines it is left out, as those are heavier anyway. What is
 * thinner than a limit is not outlined.
 *
 * <p>With a depth pass the outline is where the surface breaks off: where what lies on the other side of the line is
 * much farther away, or the background. So a wall's foot on the ground is no outline, and lines that enclose nothing, as
 * those of a wall whose foot is hidden, can be.
 */
public final class ProfileLines {
    /** Joins what was split; what is left shorter than this is a remnant. */
    private static final CleanUpSettings JOINED = new CleanUpSettings(0.01, 0.1, 1.5, 0);

    private ProfileLines() {}

    /**
     * The outline by lines alone.
     *
     * @param building the building's lines, cleaned or not
     * @param cut lines that enclose the building too but are drawn heavier than its outline: those of the cut
     * @return paths along lines of the building; none where the lines enclose nothing
     */
    public static List<VectorPath<SheetPoint>> of(
            List<VectorPath<SheetPoint>> building, List<VectorPath<SheetPoint>> cut, ProfileSettings settings) {
        return of(building, cut, Optional.empty(), settings);
    }

    /**
     * The outline by lines and depth. Where nothing is known of the depth, lines alone decide.
     *
     * @param building the building's lines, cleaned or not
     * @param cut lines that enclose the building too but are drawn heavier than its outline: those of the cut
     * @param depth how far away what the sheet shows is
     * @return paths along lines of the building
     */
    public static List<VectorPath<SheetPoint>> of(
            List<VectorPath<SheetPoint>> building,
            List<VectorPath<SheetPoint>> cut,
            DepthField depth,
            ProfileSettings settings) {
        return of(building, cut, Optional.of(depth), settings);
    }

    private static List<VectorPath<SheetPoint>> of(
            List<VectorPath<SheetPoint>> building,
            List<VectorPath<SheetPoint>> cut,
            Optional<DepthField> depth,
            ProfileSettings settings) {
        List<ProfileSegment> segments = Segments.of(building, cut);
        segments.addAll(Bridges.over(segments, settings.gapMm()));
        Arrangement arrangement = Arrangement.of(segments);
        Geometry covered = arrangement.covered();
        List<LineSegment> outline = arrangement.outline(covered, settings.thinMm());
        if (depth.isPresent()) {
            DepthSteps steps = new DepthSteps(depth.get(), settings);
            List<LineSegment> broken = new ArrayList<>();
            outline.forEach(edge -> steps.alongOutline(edge, broken));
            arrangement.outside(covered).forEach(edge -> steps.alongAny(edge, broken));
            outline = broken;
        }
        return CleanUp.run(outline.stream().map(ProfileLines::path).toList(), JOINED)
                .paths();
    }

    private static VectorPath<SheetPoint> path(LineSegment edge) {
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        path.moveTo(edge.p0.x, edge.p0.y);
        path.lineTo(edge.p1.x, edge.p1.y);
        return path.build();
    }
}
