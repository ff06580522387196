package org.adumbrate.linework.profile;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineSegment;
import org.locationtech.jts.index.hprtree.HPRtree;

/**
 * Bridges from loose ends: over small gaps to whatever is nearest, and over gaps of any width that something in front
 * leaves in a straight line, from one part of the line to the next.
 */
final class Bridges {
    /** In mm: an end this near to a line is not loose. */
    private static final double TOUCH_MM = 0.005;

    /** In mm: parts of one straight line lie no farther beside each other. */
    private static final double IN_LINE_MM = 0.05;

    /** In mm: wider interruptions are not taken for one line. */
    private static final double WIDEST_MM = 40;

    private record End(Coordinate at, Coordinate other, int piece) {}

    private final List<ProfileSegment> segments;
    private final double gap;
    private final HPRtree tree = new HPRtree();
    private final List<ProfileSegment> bridges = new ArrayList<>();

    private Bridges(List<ProfileSegment> segments, double gap) {
        this.segments = segments;
        this.gap = gap;
        for (int k = 0; k < segments.size(); k++) {
            LineSegment line = segments.get(k).line();
            tree.insert(new Envelope(line.p0, line.p1), k);
        }
    }

    /** The bridges that some pieces need, over small gaps up to one in mm. */
    static List<ProfileSegment> over(List<ProfileSegment> segments, double gap) {
        Bridges bridges = new Bridges(segments, gap);
        List<End> loose = new ArrayList<>();
        for (int k = 0; k < segments.size(); k++) {
            LineSegment line = segments.get(k).line();
            bridges.look(new End(line.p0, line.p1, k), loose);
            bridges.look(new End(line.p1, line.p0, k), loose);
        }
        bridges.inLine(loose);
        return bridges.bridges;
    }

    /** Bridges the small gap at an end, if there is one; an end with nothing near it is loose. */
    private void look(End end, List<End> loose) {
        Envelope around = new Envelope(end.at);
        around.expandBy(gap);
        Coordinate nearest = null;
        double least = gap;
        for (Object item : tree.query(around)) {
            int other = (int) item;
            if (other != end.piece) {
                Coordinate point = segments.get(other).line().closestPoint(end.at);
                double distance = point.distance(end.at);
                if (distance <= TOUCH_MM) {
                    return;
                }
                if (distance < least) {
                    least = distance;
                    nearest = point;
                }
            }
        }
        if (nearest == null) {
            loose.add(end);
        } else {
            bridges.add(ProfileSegment.of(end.at, nearest, ProfileSegment.Kind.BRIDGE));
        }
    }

    private void inLine(List<End> loose) {
        HPRtree ends = new HPRtree();
        for (int n = 0; n < loose.size(); n++) {
            ends.insert(new Envelope(loose.get(n).at), n);
        }
        for (int n = 0; n < loose.size(); n++) {
            End from = loose.get(n);
            Envelope around = new Envelope(from.at);
            around.expandBy(WIDEST_MM);
            int best = -1;
            double least = WIDEST_MM;
            for (Object item : loose.isEmpty() ? List.of() : ends.query(around)) {
                int other = (int) item;
                double distance = from.at.distance(loose.get(other).at);
                if (distance < least && goesOn(from, loose.get(other)) && goesOn(loose.get(other), from)) {
                    least = distance;
                    best = other;
                }
            }
            if (best > n) {
                bridges.add(ProfileSegment.of(from.at, loose.get(best).at, ProfileSegment.Kind.BRIDGE));
            }
        }
    }

    /** True if the line through an end's piece, drawn on beyond it, meets another end. */
    private static boolean goesOn(End from, End to) {
        LineSegment line = new LineSegment(from.other, from.at);
        return line.projectionFactor(to.at) > 1 && line.distancePerpendicular(to.at) <= IN_LINE_MM;
    }
}
