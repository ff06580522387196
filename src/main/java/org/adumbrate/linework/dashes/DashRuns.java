package org.adumbrate.linework.dashes;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.Stroke;

/**
 * The runs of a sheet's strokes that may be dashes: open, unbroken and short. Run k has two ends, 2k where it begins and 2k + 1 where it
 * ends. Sheets have very many, so they stand in plain arrays.
 */
final class DashRuns {
    /** A long dash is 24 line widths long (ISO 128-2, table 2), 24 mm with the widest pens that are used. */
    static final double LONGEST_MM = 25;

    /** Curves are measured by chords, none farther from it than this, in mm. */
    private static final double FLATNESS_MM = 0.002;

    /** Widths are the same to within this, in mm. */
    private static final double SAME_WIDTH_MM = 0.02;

    /** What all dashes of a line have in common: by colour, width and layer, each look's number. */
    private final Map<Srgb, Map<Long, Map<Optional<String>, Integer>>> looks = new HashMap<>();

    private int lookCount;
    private final BitSet others = new BitSet();
    private int size;
    private int[] strokes = new int[64];
    private int[] runs = new int[64];
    private int[] lookOf = new int[64];
    private boolean[] straight = new boolean[64];
    private double[] lengths = new double[64];
    private double[] widths = new double[64];

    /** For each end where it is, x and y, and the unit vector in which a line goes on past it. */
    private double[] ends = new double[8 * 64];

    DashRuns(List<Stroke> all) {
        Reader reader = new Reader();
        for (int k = 0; k < all.size(); k++) {
            if (all.get(k).dash().isNone()) {
                reader.read(k, all.get(k));
            } else {
                others.set(k);
            }
        }
    }

    int size() {
        return size;
    }

    /** The strokes that are not wholly straight runs: dashed, closed, curved, bent or long. */
    BitSet others() {
        return others;
    }

    /** How many looks there are; they are numbered from 0. */
    int looks() {
        return lookCount;
    }

    /** The number of a run's stroke. */
    int stroke(int k) {
        return strokes[k];
    }

    /** Which of its stroke's runs it is. */
    int run(int k) {
        return runs[k];
    }

    /** A number for what a run looks like. */
    int look(int k) {
        return lookOf[k];
    }

    /** How long a run is. */
    double lengthMm(int k) {
        return lengths[k];
    }

    /** How wide its stroke is. */
    double widthMm(int k) {
        return widths[k];
    }

    /** Whether a run is one straight line. */
    boolean isStraight(int k) {
        return straight[k];
    }

    double x(int end) {
        return ends[4 * end];
    }

    double y(int end) {
        return ends[4 * end + 1];
    }

    /** The direction in which a line goes on past an end. */
    double outX(int end) {
        return ends[4 * end + 2];
    }

    /** As {@link #outX}. */
    double outY(int end) {
        return ends[4 * end + 3];
    }

    private void grow() {
        int room = 2 * strokes.length;
        strokes = Arrays.copyOf(strokes, room);
        runs = Arrays.copyOf(runs, room);
        lookOf = Arrays.copyOf(lookOf, room);
        straight = Arrays.copyOf(straight, room);
        lengths = Arrays.copyOf(lengths, room);
        widths = Arrays.copyOf(widths, room);
        ends = Arrays.copyOf(ends, 8 * room);
    }

    private void putEnd(int end, double x, double y, double outX, double outY) {
        ends[4 * end] = x;
        ends[4 * end + 1] = y;
        ends[4 * end + 2] = outX;
        ends[4 * end + 3] = outY;
    }

    /** Makes no object for a straight piece, as nearly all of a sheet's are. */
    private final class Reader implements VectorPath.Visitor {
        private Stroke of;
        private int stroke;
        private int look;
        private int run;
        private int count;
        private boolean begun;
        private boolean curved;
        private double length;
        private double startX;
        private double startY;
        private double endX;
        private double endY;
        private double firstX;
        private double firstY;
        private double lastX;
        private double lastY;

        void read(int number, Stroke read) {
            if (of == null
                    || of.widthMm() != read.widthMm()
                    || !of.color().equals(read.color())
                    || !of.layer().equals(read.layer())) {
                look = looks.computeIfAbsent(read.color(), color -> new HashMap<>())
                        .computeIfAbsent(Math.round(read.widthMm() / SAME_WIDTH_MM), width -> new HashMap<>())
                        .computeIfAbsent(read.layer(), layer -> lookCount++);
            }
            of = read;
            stroke = number;
            run = -1;
            read.path().visit(this);
            end(false);
        }

        @Override
        public void moveTo(double x, double y) {
            end(false);
            startX = endX = x;
            startY = endY = y;
        }

        @Override
        public void lineTo(double x, double y) {
            begin();
            if (length <= LONGEST_MM) {
                chord(endX, endY, x, y);
            }
            endX = x;
            endY = y;
        }

        @Override
        public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
            begin();
            if (length <= LONGEST_MM) {
                curved = true;
                PathPiece.curve(endX, endY, x1, y1, x2, y2, x, y).chords(FLATNESS_MM, this::chord);
            }
            endX = x;
            endY = y;
        }

        @Override
        public void close() {
            begin();
            end(true);
            // what follows without a move begins where this did
            endX = startX;
            endY = startY;
        }

        private void begin() {
            if (!begun) {
                begun = true;
                run++;
                count = 0;
                curved = false;
                length = 0;
            }
        }

        private void chord(double x0, double y0, double x1, double y1) {
            double dx = x1 - x0;
            double dy = y1 - y0;
            double chord = Math.sqrt(dx * dx + dy * dy);
            if (chord > 0) {
                lastX = dx / chord;
                lastY = dy / chord;
                if (count++ == 0) {
                    firstX = -lastX;
                    firstY = -lastY;
                }
                length += chord;
            }
        }

        private void end(boolean closed) {
            boolean ring = closed || (startX == endX && startY == endY);
            boolean dash = begun && !ring && length <= LONGEST_MM && count > 0;
            if (begun && !(dash && !curved && count == 1)) {
                others.set(stroke);
            }
            begun = false;
            if (!dash) {
                return;
            }
            if (size == strokes.length) {
                grow();
            }
            strokes[size] = stroke;
            runs[size] = run;
            lookOf[size] = look;
            straight[size] = !curved && count == 1;
            lengths[size] = length;
            widths[size] = of.widthMm();
            putEnd(2 * size, startX, startY, firstX, firstY);
            putEnd(2 * size + 1, endX, endY, lastX, lastY);
            size++;
        }
    }
}
