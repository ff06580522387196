package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.List;

/**
 * A height line and the floor that it stands on.
 *
 * @param line the line
 * @param level the floor's place among the levels of a pencil
 */
record Standing(HeightLine line, int level) {
    /** Every line that comes near enough to a floor, with the nearest one. */
    static List<Standing> of(List<HeightLine> lines, Pencil pencil, double gateMm) {
        List<Standing> standings = new ArrayList<>();
        for (HeightLine line : lines) {
            int level = pencil.nearest(line);
            if (level >= 0 && Math.abs(pencil.residual(line, pencil.levels().get(level))) <= gateMm) {
                standings.add(new Standing(line, level));
            }
        }
        return standings;
    }
}
