package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Uprights sorted into columns of a millimetre, so that those beside one are found without looking at all. */
final class SideBySide {
    private final Map<Long, List<HeightLine>> columns = new HashMap<>();

    void add(HeightLine line) {
        columns.computeIfAbsent(column(line), k -> new ArrayList<>()).add(line);
    }

    void remove(HeightLine line) {
        columns.getOrDefault(column(line), new ArrayList<>()).remove(line);
    }

    /** Those whose foot lies in the column of a line's foot or in one of the next two on either side. */
    List<HeightLine> near(HeightLine line) {
        List<HeightLine> near = new ArrayList<>();
        for (long k = column(line) - 2; k <= column(line) + 2; k++) {
            near.addAll(columns.getOrDefault(k, List.of()));
        }
        return near;
    }

    List<HeightLine> all() {
        return columns.values().stream().flatMap(List::stream).toList();
    }

    private static long column(HeightLine line) {
        return (long) Math.floor(line.foot().x());
    }
}
