package org.adumbrate.figure.shadow;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.Region;

/**
 * A figure as a solid: its outline cut in level slices, each run of a slice an upright elliptical disc. So its shadow never
 * collapses when the sun stands beside it. Metres; x along the outline from the foot, z up from the floor.
 *
 * @param stature how tall it is in metres
 * @param discs what it consists of, from the lowest up
 */
public record SliceSolid(double stature, List<Disc> discs) {
    /** The number of slices, all of one height. */
    static final int SLICES = 160;

    /** The depth of a body that is as wide as deep bodies are: a share of its width. */
    private static final double DEPTH_OF_WIDTH = 0.62;

    /** No deeper than 0.30 m at a stature of 1.75 m. */
    private static final double DEPTH_OF_STATURE = 0.30 / 1.75;

    /**
     * An upright elliptical disc.
     *
     * @param bottom z of its lower face
     * @param top z of its upper face
     * @param centre x of its axis
     * @param halfWidth half its width along the outline
     * @param halfDepth half its depth across the outline
     */
    public record Disc(double bottom, double top, double centre, double halfWidth, double halfDepth) {
        /** @throws IllegalArgumentException if it is flat in any direction or a number is not finite */
        public Disc {
            boolean solid = top > bottom && halfWidth > 0 && halfDepth > 0;
            if (!(solid && Double.isFinite(bottom + top + centre + halfWidth + halfDepth))) {
                throw new IllegalArgumentException("a disc must have a height, a width and a depth");
            }
        }
    }

    /** @throws IllegalArgumentException if the stature is not above zero */
    public SliceSolid {
        if (!(stature > 0 && Double.isFinite(stature))) {
            throw new IllegalArgumentException("a stature must be above zero");
        }
        discs = List.copyOf(discs);
    }

    /**
     * The solid of an outline. In each slice every run of the outline at the slice's mid height becomes a disc as wide as
     * the run, and as deep as the smaller of 0.62 of its width and 0.30 / 1.75 of the stature.
     *
     * @param outline in any unit, y down, its foot at (0, 0) and its top at y = -height
     * @param height of the outline in its unit, above zero
     * @param stature that it stands for, in metres
     */
    public static SliceSolid of(Region<?> outline, double height, double stature) {
        if (!(height > 0 && Double.isFinite(height))) {
            throw new IllegalArgumentException("an outline must have a height");
        }
        LevelRuns runs = LevelRuns.of(outline);
        double scale = stature / height;
        double thick = stature / SLICES;
        List<Disc> discs = new ArrayList<>();
        for (int k = 0; k < SLICES; k++) {
            double[] ends = runs.at(-height * (k + 0.5) / SLICES);
            for (int e = 0; e + 1 < ends.length; e += 2) {
                double width = scale * (ends[e + 1] - ends[e]);
                double depth = Math.min(DEPTH_OF_WIDTH * width, DEPTH_OF_STATURE * stature);
                if (width > 0) {
                    double centre = scale * (ends[e] + ends[e + 1]) / 2;
                    discs.add(new Disc(k * thick, (k + 1) * thick, centre, width / 2, depth / 2));
                }
            }
        }
        return new SliceSolid(stature, discs);
    }
}
