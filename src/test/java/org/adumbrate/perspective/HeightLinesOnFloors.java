package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.ModelPoint;

/** Exact height lines in a view. */
final class HeightLinesOnFloors {
    private HeightLinesOnFloors() {}

    /** A line across and behind the section plane's origin. */
    static HeightLine line(View view, double x, double depth, double elevation) {
        return new HeightLine(
                view.project(new ModelPoint(x, depth, elevation)).orElseThrow(),
                view.project(new ModelPoint(x, depth, elevation + DrawnHeights.HEIGHT))
                        .orElseThrow());
    }

    /** Lines on one floor, side by side at depths. */
    static List<HeightLine> lines(View view, double elevation, double... depths) {
        List<HeightLine> lines = new ArrayList<>();
        for (double depth : depths) {
            lines.add(line(view, lines.size() - 1.7 + elevation / 10, depth, elevation));
        }
        return lines;
    }
}
