package org.adumbrate.linework.region;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.hprtree.HPRtree;

/** The neighbourhoods of groups of lines: upright rectangles around lines that lie close together. */
final class Surroundings {
    /** Lines closer than this, in mm, belong to one group. */
    private static final double CLOSE_MM = 3;
    /** How far a neighbourhood reaches beyond its group: as a share of the group's size, and at least, in mm. */
    private static final double SHARE = 0.25;

    private static final double LEAST_MM = 5;

    private final HPRtree areas = new HPRtree();

    Surroundings(List<Segment> lines) {
        for (Envelope group : groups(lines)) {
            Envelope area = new Envelope(group);
            area.expandBy(Math.max(LEAST_MM, SHARE * group.getWidth()), Math.max(LEAST_MM, SHARE * group.getHeight()));
            areas.insert(area, area);
        }
    }

    /** Those of some lines that come into a neighbourhood. */
    List<Segment> of(List<Segment> others) {
        List<Segment> near = new ArrayList<>();
        for (Segment other : others) {
            if (!areas.query(bounds(other)).isEmpty()) {
                near.add(other);
            }
        }
        return near;
    }

    private static Envelope bounds(Segment line) {
        return new Envelope(line.x0(), line.x1(), line.y0(), line.y1());
    }

    /** Marks the cells of a coarse grid that lines come into, and takes cells side by side as a group. */
    private static List<Envelope> groups(List<Segment> lines) {
        Map<Long, Envelope> cells = new HashMap<>();
        for (Segment line : lines) {
            int steps = 1 + (int) (line.length() / CLOSE_MM);
            for (int k = 0; k <= steps; k++) {
                double x = line.x0() + k * (line.x1() - line.x0()) / steps;
                double y = line.y0() + k * (line.y1() - line.y0()) / steps;
                cells.computeIfAbsent(cell(x, y), key -> new Envelope()).expandToInclude(x, y);
            }
        }
        List<Envelope> groups = new ArrayList<>();
        while (!cells.isEmpty()) {
            Envelope group = new Envelope();
            Deque<Long> open =
                    new ArrayDeque<>(List.of(cells.keySet().iterator().next()));
            while (!open.isEmpty()) {
                long at = open.remove();
                Envelope part = cells.remove(at);
                if (part != null) {
                    group.expandToInclude(part);
                    for (int k = 0; k < 9; k++) {
                        open.add(at + (((long) (k / 3 - 1)) << 32) + (k % 3 - 1));
                    }
                }
            }
            groups.add(group);
        }
        return groups;
    }

    private static long cell(double x, double y) {
        return ((long) (x / CLOSE_MM) << 32) + (long) (y / CLOSE_MM);
    }
}
