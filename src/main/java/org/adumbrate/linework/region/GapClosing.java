package org.adumbrate.linework.region;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import org.adumbrate.linework.region.LineEnd.Tail;
import org.adumbrate.linework.region.LineGraph.Edge;

/**
 * Lengthens lines that fall short of each other. An end is lengthened along its own direction to where it meets the
 * lengthened other end, so that a corner comes out sharp, or to the line that it runs into; where neither is within
 * reach it is joined straight to the nearest end or line. Nearer meetings are made first, and after each round the lines are
 * cut anew, so that what was lengthened counts as drawn.
 */
final class GapClosing {
    private static final int MOST_ROUNDS = 3;
    /** Below this angle between two lines their meeting is too uncertain to be used. */
    private static final double LEAST_SINE = Math.sin(Math.toRadians(8));
    /** How far an end may lie beyond the meeting already: two grid steps. */
    private static final double BEYOND_MM = 2.0 / LineGraph.STEPS_PER_MM;

    private final LineGraph graph;
    private final double gapMm;
    private final List<LineEnd> ends;

    private GapClosing(LineGraph graph, double gapMm) {
        this.graph = graph;
        this.gapMm = gapMm;
        this.ends = LineEnd.of(graph, 2 * gapMm);
    }

    /**
     * A possible meeting.
     *
     * @param cost the longest way that an end goes for it in mm, and a gap more if it does not go along its line
     * @param second the other end, or null where a line is met
     */
    private record Meeting(double cost, LineEnd first, LineEnd second, double x, double y) {}

    /**
     * The graph of lines with gaps closed and short ends beyond a crossing taken away. Gaps within the tolerance to which lines are
     * made whole are closed in any case.
     *
     * @param askedMm how far an end may be lengthened, in mm
     */
    static LineGraph close(List<Segment> lines, double askedMm) {
        if (!(askedMm >= 0 && askedMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a gap of " + askedMm + " mm cannot be closed");
        }
        double gapMm = Math.max(askedMm, 2 * Straights.TOLERANCE_MM);
        List<Segment> all = new ArrayList<>(lines);
        for (int round = 1; ; round++) {
            LineGraph graph = trimmed(LineGraph.of(all), gapMm);
            List<Segment> added = round > MOST_ROUNDS ? List.of() : new GapClosing(graph, gapMm).meet();
            if (added.isEmpty()) {
                return graph;
            }
            all.addAll(added);
        }
    }

    /** Without what sticks out beyond a crossing by no more than a gap: it would be taken for a line that falls short. */
    private static LineGraph trimmed(LineGraph graph, double gapMm) {
        BitSet dropped = new BitSet();
        for (LineEnd end : LineEnd.of(graph, gapMm)) {
            Tail tail = end.tail();
            if (tail.lengthMm() <= gapMm && graph.degree(tail.far()) > 2) {
                tail.edges().forEach(dropped::set);
            }
        }
        return graph.without(dropped);
    }

    private List<Segment> meet() {
        List<Meeting> meetings = new ArrayList<>();
        Nearby edges = Nearby.edges(graph);
        Nearby others = Nearby.ends(ends);
        for (LineEnd end : ends) {
            for (int k : others.within(2 * gapMm, end.x(), end.y())) {
                LineEnd other = ends.get(k);
                if (other.corner() > end.corner()) {
                    withEnd(end, other, meetings);
                }
            }
            for (int e : edges.within(gapMm, end.x(), end.y())) {
                if (!end.tail().edges().contains(e)) {
                    withLine(end, graph.edges().get(e), meetings);
                }
            }
        }
        meetings.sort(Comparator.comparingDouble(Meeting::cost));
        return made(meetings);
    }

    private List<Segment> made(List<Meeting> meetings) {
        List<Segment> added = new ArrayList<>();
        BitSet met = new BitSet();
        for (Meeting meeting : meetings) {
            LineEnd first = meeting.first;
            LineEnd second = meeting.second;
            if (met.get(first.corner()) || (second != null && met.get(second.corner()))) {
                continue;
            }
            met.set(first.corner());
            added.add(lengthened(first, meeting));
            if (second != null) {
                met.set(second.corner());
                added.add(lengthened(second, meeting));
            }
        }
        added.removeIf(segment -> segment.length() == 0);
        return added;
    }

    private Segment lengthened(LineEnd end, Meeting meeting) {
        return new Segment(graph.xMm(end.corner()), graph.yMm(end.corner()), meeting.x, meeting.y, end.kind(), false);
    }

    private void withEnd(LineEnd a, LineEnd b, List<Meeting> meetings) {
        if (a.tail().far() == b.corner()) {
            return;
        }
        double gapX = b.x() - a.x();
        double gapY = b.y() - a.y();
        double sine = a.dx() * b.dy() - a.dy() * b.dx();
        if (Math.abs(sine) >= LEAST_SINE) {
            double along = (gapX * b.dy() - gapY * b.dx()) / sine;
            double back = (gapX * a.dy() - gapY * a.dx()) / sine;
            if (reachable(along) && reachable(back)) {
                double x = a.x() + along * a.dx();
                double y = a.y() + along * a.dy();
                meetings.add(new Meeting(Math.max(along, back), a, b, x, y));
                return;
            }
        }
        double distance = a.distanceTo(b);
        boolean inLine = a.dx() * b.dx() + a.dy() * b.dy() < 0
                && Math.abs(gapX * a.dy() - gapY * a.dx()) <= Math.max(BEYOND_MM, LEAST_SINE * distance)
                && gapX * a.dx() + gapY * a.dy() > 0;
        if (inLine) {
            meetings.add(new Meeting(distance / 2, a, b, b.x(), b.y()));
        } else if (distance <= gapMm) {
            meetings.add(new Meeting(gapMm + distance, a, b, b.x(), b.y()));
        }
    }

    private boolean reachable(double way) {
        return way >= -BEYOND_MM && way <= gapMm;
    }

    /** A little beyond the line, so that it is crossed for certain; what sticks out is trimmed. */
    private void withLine(LineEnd end, Edge edge, List<Meeting> meetings) {
        double x0 = graph.xMm(edge.from()) - end.x();
        double y0 = graph.yMm(edge.from()) - end.y();
        double dx = graph.xMm(edge.to()) - end.x() - x0;
        double dy = graph.yMm(edge.to()) - end.y() - y0;
        double cross = end.dx() * dy - end.dy() * dx;
        double share = (end.dy() * x0 - end.dx() * y0) / cross;
        double way = (x0 * dy - y0 * dx) / cross;
        if (share >= 0 && share <= 1 && way >= 0 && way <= gapMm) {
            double over = way + BEYOND_MM;
            meetings.add(new Meeting(way, end, null, end.x() + over * end.dx(), end.y() + over * end.dy()));
            return;
        }
        double foot = Math.max(0, Math.min(1, -(x0 * dx + y0 * dy) / (dx * dx + dy * dy)));
        double footX = x0 + foot * dx;
        double footY = y0 + foot * dy;
        double distance = Math.hypot(footX, footY);
        if (distance <= gapMm && distance > 0) {
            double over = 1 + BEYOND_MM / distance;
            meetings.add(new Meeting(gapMm + distance, end, null, end.x() + over * footX, end.y() + over * footY));
        }
    }
}
