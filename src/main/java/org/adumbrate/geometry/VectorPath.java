package org.adumbrate.geometry;

import java.io.DataInputStream;
import java.io.DataOutput;
import java.io.IOException;
import java.util.Arrays;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/**
 * A path of straight and cubic pieces in one plane, in one or more runs; immutable. Curves stay curves.
 *
 * @param <P> the plane it lies in
 */
public final class VectorPath<P extends PlanePoint> {
    private static final byte MOVE = 0;
    private static final byte LINE = 1;
    private static final byte CURVE = 2;
    private static final byte CLOSE = 3;

    private final Space<P> space;
    private final byte[] steps;
    private final double[] coordinates;

    private VectorPath(Space<P> space, byte[] steps, double[] coordinates) {
        this.space = space;
        this.steps = steps;
        this.coordinates = coordinates;
    }

    /** Receives the pieces of a path in order; coordinates are in the unit of the path's plane. */
    public interface Visitor {
        /** Starts a run. */
        void moveTo(double x, double y);

        /** Goes straight. */
        void lineTo(double x, double y);

        /** Goes along a cubic Bezier curve with two control points to (x, y). */
        void curveTo(double x1, double y1, double x2, double y2, double x, double y);

        /** Goes straight back to where the run began and joins there. */
        void close();
    }

    /** Starts a path in a plane. */
    public static <P extends PlanePoint> Builder<P> in(Space<P> space) {
        return new Builder<>(space);
    }

    /** The plane it lies in. */
    public Space<P> space() {
        return space;
    }

    /** True when there is nothing to draw. */
    public boolean isEmpty() {
        return segments() == 0;
    }

    /** The number of straight and curved pieces, closing ones included. */
    public int segments() {
        int count = 0;
        for (byte step : steps) {
            count += step == MOVE ? 0 : 1;
        }
        return count;
    }

    /** The number of runs. */
    public int runs() {
        int count = 0;
        for (byte step : steps) {
            count += step == MOVE ? 1 : 0;
        }
        return count;
    }

    /** Walks over the path. */
    public void visit(Visitor visitor) {
        int k = 0;
        for (byte step : steps) {
            switch (step) {
                case MOVE -> visitor.moveTo(coordinates[k++], coordinates[k++]);
                case LINE -> visitor.lineTo(coordinates[k++], coordinates[k++]);
                case CURVE -> {
                    visitor.curveTo(
                            coordinates[k],
                            coordinates[k + 1],
                            coordinates[k + 2],
                            coordinates[k + 3],
                            coordinates[k + 4],
                            coordinates[k + 5]);
                    k += 6;
                }
                default -> visitor.close();
            }
        }
    }

    /** Goes along the path piece by piece. */
    public void pieces(PieceVisitor visitor) {
        new PathWalk.ByPieces(visitor).along(this);
    }

    /**
     * Goes along the path by straight lines, curves as chords; closing steps are lines too.
     *
     * @param tolerance how far a point of a curve may lie from the chord over it, in the unit of the plane, positive
     */
    public void chords(double tolerance, ChordVisitor visitor) {
        new PathWalk.ByChords(tolerance, visitor).along(this);
    }

    /** The path's image under a map. */
    public <Q extends PlanePoint> VectorPath<Q> transform(Affine<P, Q> map) {
        double[] mapped = new double[coordinates.length];
        for (int k = 0; k < mapped.length; k += 2) {
            mapped[k] = map.mapX(coordinates[k], coordinates[k + 1]);
            mapped[k + 1] = map.mapY(coordinates[k], coordinates[k + 1]);
        }
        return new VectorPath<>(map.to(), steps, mapped);
    }

    /** The box around the path and its control points; nothing if it has no points. */
    public Optional<Extent> extent() {
        double left = Double.POSITIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < coordinates.length; k += 2) {
            left = Math.min(left, coordinates[k]);
            right = Math.max(right, coordinates[k]);
            top = Math.min(top, coordinates[k + 1]);
            bottom = Math.max(bottom, coordinates[k + 1]);
        }
        return coordinates.length == 0 ? Optional.empty() : Optional.of(new Extent(left, top, right, bottom));
    }

    /**
     * The same path with its curves as chords; a run that was closed ends on its first point.
     *
     * @param tolerance how far a point of a curve may lie from the chord over it, in the unit of the plane
     */
    public VectorPath<P> straightened(double tolerance) {
        Builder<P> straight = in(space);
        for (Coordinate[] run : CoordinateRuns.of(this, tolerance)) {
            straight.moveTo(run[0].x, run[0].y);
            for (int k = 1; k < run.length; k++) {
                straight.lineTo(run[k].x, run[k].y);
            }
        }
        return straight.build();
    }

    /** The length of the path in the unit of its plane; curves to within a millionth of themselves. */
    public double length() {
        PathLength measure = new PathLength();
        pieces(measure);
        return measure.length();
    }

    /** Writes it, to be read by {@link #readFrom}. */
    public void writeTo(DataOutput out) throws IOException {
        out.writeUTF(space.toString());
        out.writeInt(steps.length);
        out.write(steps);
        for (double coordinate : coordinates) {
            out.writeDouble(coordinate);
        }
    }

    /**
     * Reads what {@link #writeTo} wrote.
     *
     * @throws IOException if there is no path
     */
    public static VectorPath<?> readFrom(DataInputStream in) throws IOException {
        return readFrom(Space.named(in.readUTF()), in);
    }

    private static <P extends PlanePoint> VectorPath<P> readFrom(Space<P> space, DataInputStream in)
            throws IOException {
        Builder<P> path = in(space);
        for (byte step : in.readNBytes(in.readInt())) {
            switch (step) {
                case MOVE -> path.moveTo(in.readDouble(), in.readDouble());
                case LINE -> path.lineTo(in.readDouble(), in.readDouble());
                case CURVE ->
                    path.curveTo(
                            in.readDouble(),
                            in.readDouble(),
                            in.readDouble(),
                            in.readDouble(),
                            in.readDouble(),
                            in.readDouble());
                case CLOSE -> path.close();
                default -> throw new IOException("no step of a path");
            }
        }
        return path.build();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof VectorPath<?> path
                && space == path.space
                && Arrays.equals(steps, path.steps)
                && Arrays.equals(coordinates, path.coordinates);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(steps) + Arrays.hashCode(coordinates);
    }

    /** Such as {@code M 1 2 L 3 4 Z}, for messages and tests. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        int k = 0;
        for (byte step : steps) {
            text.append(text.isEmpty() ? "" : " ").append("MLCZ".charAt(step));
            for (int n = step == CLOSE ? 0 : step == CURVE ? 6 : 2; n > 0; n--) {
                text.append(' ').append(coordinates[k++]);
            }
        }
        return text.toString();
    }

    /** Collects the pieces of a path. */
    public static final class Builder<P extends PlanePoint> implements Visitor {
        private final Space<P> space;
        private byte[] steps = new byte[4];
        private double[] coordinates = new double[8];
        private int stepCount;
        private int coordinateCount;

        private Builder(Space<P> space) {
            this.space = space;
        }

        @Override
        public void moveTo(double x, double y) {
            step(MOVE, 2);
            put(x, y);
        }

        @Override
        public void lineTo(double x, double y) {
            step(LINE, 2);
            put(x, y);
        }

        @Override
        public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
            step(CURVE, 6);
            put(x1, y1);
            put(x2, y2);
            put(x, y);
        }

        @Override
        public void close() {
            step(CLOSE, 0);
        }

        /** The path so far. */
        public VectorPath<P> build() {
            return new VectorPath<>(
                    space, Arrays.copyOf(steps, stepCount), Arrays.copyOf(coordinates, coordinateCount));
        }

        private void step(byte step, int more) {
            Space.require(step == MOVE || stepCount > 0, () -> "a path must start with a move");
            if (stepCount == steps.length) {
                steps = Arrays.copyOf(steps, 2 * stepCount);
            }
            if (coordinateCount + more > coordinates.length) {
                coordinates = Arrays.copyOf(coordinates, 2 * coordinates.length);
            }
            steps[stepCount++] = step;
        }

        private void put(double x, double y) {
            Space.require(Double.isFinite(x) && Double.isFinite(y), () -> "a path needs finite coordinates");
            coordinates[coordinateCount++] = x;
            coordinates[coordinateCount++] = y;
        }
    }
}
