package org.adumbrate.linework.profile;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;

/**
 * Lines that become lighter with their distance, still as vectors: each is split where its weight changes. A line lies
 * on the edge of something, so its depth is the least that is found around it. Dashes begin anew at every split.
 */
public final class DepthWeight {
    private DepthWeight() {}

    /**
     * Sorts the lines of one pen by weight.
     *
     * @param paths the lines
     * @param depth how far away what the sheet shows is; where nothing is known lines have the weight of what is before or
     *     after on the same run, or else the whole
     * @param fade how weight falls off
     * @return the weights that occur with their lines, the lightest first, so that what is nearer is drawn on top
     */
    public static List<WeightedLines> of(List<VectorPath<SheetPoint>> paths, DepthField depth, Fade fade) {
        List<List<VectorPath<SheetPoint>>> byWeight = new ArrayList<>();
        for (int weight = 0; weight < Fade.WEIGHTS; weight++) {
            byWeight.add(new ArrayList<>());
        }
        RunSplitter splitter = new RunSplitter(new WeightAlong(depth, fade), byWeight);
        for (VectorPath<SheetPoint> path : paths) {
            path.pieces(splitter);
        }
        List<WeightedLines> lines = new ArrayList<>();
        for (int weight = Fade.WEIGHTS - 1; weight >= 0; weight--) {
            if (!byWeight.get(weight).isEmpty()) {
                lines.add(new WeightedLines(fade.share(weight), byWeight.get(weight)));
            }
        }
        return lines;
    }
}
