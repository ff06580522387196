package org.adumbrate.figure.shadow;

/**
 * A figure as the sun sees it, in metres of the {@link SunFrame} from its foot: level rows a millimetre apart, each with the
 * runs that are hidden at it and how far toward the sun their ends lie. From a place in the shadow the rows are seen in
 * perspective: what lies t metres nearer to the sun is seen from there at its distance across and up, divided by t.
 *
 * <p>That perspective turns the figure by less than 0.27 degrees against the sun's own view, which moves what bounds an
 * ellipse of 0.2 m by 2 micrometres. Where parts far behind each other meet in one row, the row's height is right for
 * their mean distance only; a metre between them moves it by 5 mm at the rim of the disc. That is little but within a degree
 * of the zenith, where rows hold a figure from foot to head.
 */
final class SunSilhouette {
    /** Rows of a block: what is told of 8 mm of the figure at once. */
    static final int BLOCK = 16;

    /** A place this far within a figure, in metres, still counts as before it: rows are not infinitely fine. */
    private static final double SKIN = 0.005;

    /** The nearest that anything counts, in metres. */
    private static final double NEAREST = 1e-4;

    /** How a figure may hide the sun from a neighbourhood. */
    enum Effect {
        /** Nowhere in it does the figure hide anything of the sun. */
        NONE,
        /** Neither of the others is sure. */
        SOME,
        /** Everywhere in it the figure hides the sun wholly. */
        ALL
    }

    private final ShadeRows rows;

    private SunSilhouette(ShadeRows rows) {
        this.rows = rows;
    }

    /** How a figure hides the sun. */
    static SunSilhouette of(StandingSolid figure, SunFrame sun) {
        return new SunSilhouette(ShadeRows.of(figure, sun));
    }

    /** What it consists of. */
    ShadeRows rows() {
        return rows;
    }

    /** The width of the sun's cone, from a place to the part of the figure that hides the sun's centre or is next to it. */
    double coneRadius(double up, double toward) {
        return SolarDisc.RADIUS * distance(up, toward);
    }

    private double distance(double up, double toward) {
        int row = Math.max(0, Math.min(rows.count() - 1, rows.rowAt(up)));
        return Math.max(NEAREST, rows.toward(row) - toward);
    }

    /**
     * Tells quickly what may be known of a neighbourhood.
     *
     * @param across of its middle
     * @param up of its middle
     * @param toward of its middle
     * @param roundAcross how far it reaches to either side
     * @param roundUp how far it reaches up and down
     */
    Effect effect(double across, double up, double toward, double roundAcross, double roundUp) {
        double farthest = rows.farthest() - toward;
        if (rows.count() == 0 || farthest <= -SKIN) {
            return Effect.NONE;
        }
        double cone = SolarDisc.RADIUS * Math.max(NEAREST, farthest);
        int first = rows.rowAt(up - roundUp - cone);
        int last = rows.rowAt(up + roundUp + cone);
        if (last < 0 || first >= rows.count()) {
            return Effect.NONE;
        }
        boolean within = first >= 0 && last < rows.count() && toward <= rows.nearest();
        return rows.blocks()
                .effect(
                        Math.max(0, first) / BLOCK,
                        Math.min(rows.count() - 1, last) / BLOCK,
                        across - roundAcross - cone,
                        across + roundAcross + cone,
                        within);
    }

    /** Hides what this figure hides from a place, of every so-manieth strip of the sun from a first one on. */
    void hide(double across, double up, double toward, SolarDisc disc, int first, int step) {
        if (rows.count() == 0) {
            return;
        }
        double distance = distance(up, toward);
        for (int j = first; j < SolarDisc.STRIPS; j += step) {
            int row = rows.rowAt(up + SolarDisc.height(j) * distance);
            if (row >= 0 && row < rows.count()) {
                hideStrip(row, across, toward, disc, j);
            }
        }
    }

    private void hideStrip(int row, double across, double toward, SolarDisc disc, int j) {
        for (int k = rows.begin(row), end = rows.begin(row + 1); k < end; k++) {
            double left = rows.leftToward(k) - toward;
            double right = rows.rightToward(k) - toward;
            if (left > -SKIN && right > -SKIN) {
                disc.hide(
                        j,
                        (rows.left(k) - across) / Math.max(NEAREST, left),
                        (rows.right(k) - across) / Math.max(NEAREST, right));
            }
        }
    }
}
