package org.adumbrate.registration;

/**
 * Points spread evenly along the lines of a sheet, in mm: where a pass is asked for an edge. Each knows its direction, how
 * far its piece goes on both ways, and how much room there is beside it before the next line.
 */
final class Probes {
    /** Enough that a fit is limited by the pass rather than by their number. */
    private static final int TARGET = 12_000;

    /** No closer than this, in mm: a short pattern needs no more. */
    private static final double CLOSEST_MM = 0.1;

    /** How far beside a line others are looked for, in mm. */
    static final double ROOM_MM = 4;

    /** Lines closer than this, in mm, are the same line drawn twice. */
    private static final double SAME_LINE_MM = 0.12;

    /** A piece that is looked at by itself needs no more than this to be judged... */
    private static final int MOST_ON_A_PIECE = 12;

    /** ...and can be by this many. */
    private static final int ENOUGH_ON_A_PIECE = 6;

    final int count;
    final double[] x;
    final double[] y;
    /** Unit direction of the line. */
    final double[] dx;

    final double[] dy;
    /** How far the piece goes on, in mm, along and against its direction. */
    final float[] ahead;

    final float[] behind;
    /** Distance to the nearest other line, in mm, in the direction (-dy, dx) and against it. */
    final float[] roomLeft;

    final float[] roomRight;
    /** Number of the piece that the probe lies on. */
    final int[] piece;

    private Probes(int count) {
        this.count = count;
        x = new double[count];
        y = new double[count];
        dx = new double[count];
        dy = new double[count];
        ahead = new float[count];
        behind = new float[count];
        roomLeft = new float[count];
        roomRight = new float[count];
        piece = new int[count];
    }

    /** How far probes are apart along lines of some length in all, in mm. */
    static double spacing(double lengthMm) {
        return Math.max(CLOSEST_MM, lengthMm / TARGET);
    }

    /** Probes at equal distances along all pieces, taken one after another as if they were one line. */
    static Probes along(double[] pieces, double lengthMm) {
        double spacing = spacing(lengthMm);
        Probes probes = new Probes((int) Math.floor(lengthMm / spacing + 0.5));
        double next = spacing / 2;
        double done = 0;
        int k = 0;
        for (int s = 0; s < pieces.length; s += 4) {
            double length = Math.hypot(pieces[s + 2] - pieces[s], pieces[s + 3] - pieces[s + 1]);
            while (next < done + length && k < probes.count) {
                probes.put(k++, pieces, s, length, next - done);
                next += spacing;
            }
            done += length;
        }
        Probes all = k == probes.count ? probes : probes.first(k);
        all.measureRoom(pieces);
        return all;
    }

    /**
     * Probes along each piece by itself, closer together, and with all room beside them, whatever lies there: to find which pieces a
     * pass shows, when most of them may not be seen in it.
     *
     * @param apart how far probes are apart, in mm
     * @param most probes, if that leaves each piece {@value #ENOUGH_ON_A_PIECE}; else pieces are left out evenly
     */
    static Probes ofEach(double[] pieces, double apart, int most) {
        int onEach = MOST_ON_A_PIECE;
        int count = count(pieces, apart, onEach);
        while (count > most && onEach > ENOUGH_ON_A_PIECE) {
            count = count(pieces, apart, --onEach);
        }
        return ofEach(pieces, apart, onEach, Math.max(1, (count + most - 1) / most));
    }

    private static int count(double[] pieces, double apart, int onEach) {
        int count = 0;
        for (int s = 0; s < pieces.length; s += 4) {
            count += on(pieces, s, apart, onEach);
        }
        return count;
    }

    private static Probes ofEach(double[] pieces, double apart, int onEach, int every) {
        int count = 0;
        for (int s = 0; s < pieces.length; s += 4 * every) {
            count += on(pieces, s, apart, onEach);
        }
        Probes probes = new Probes(count);
        int k = 0;
        for (int s = 0; s < pieces.length; s += 4 * every) {
            int some = on(pieces, s, apart, onEach);
            double length = Math.hypot(pieces[s + 2] - pieces[s], pieces[s + 3] - pieces[s + 1]);
            for (int j = 0; j < some; j++) {
                probes.roomLeft[k] = probes.roomRight[k] = (float) ROOM_MM;
                probes.put(k++, pieces, s, length, length * (j + 0.5) / some);
            }
        }
        return probes;
    }

    private static int on(double[] pieces, int s, double apart, int most) {
        double length = Math.hypot(pieces[s + 2] - pieces[s], pieces[s + 3] - pieces[s + 1]);
        return (int) Math.min(most, length / apart);
    }

    private void put(int k, double[] pieces, int s, double length, double along) {
        dx[k] = (pieces[s + 2] - pieces[s]) / length;
        dy[k] = (pieces[s + 3] - pieces[s + 1]) / length;
        x[k] = pieces[s] + along * dx[k];
        y[k] = pieces[s + 1] + along * dy[k];
        behind[k] = (float) along;
        ahead[k] = (float) (length - along);
        piece[k] = s / 4;
    }

    private Probes first(int n) {
        Probes some = new Probes(n);
        for (int k = 0; k < n; k++) {
            some.x[k] = x[k];
            some.y[k] = y[k];
            some.dx[k] = dx[k];
            some.dy[k] = dy[k];
            some.ahead[k] = ahead[k];
            some.behind[k] = behind[k];
            some.piece[k] = piece[k];
        }
        return some;
    }

    private void measureRoom(double[] pieces) {
        PieceGrid grid = new PieceGrid(pieces, 2);
        for (int i = 0; i < count; i++) {
            int k = i;
            roomLeft[k] = roomRight[k] = (float) ROOM_MM;
            double nx = -dy[k] * ROOM_MM;
            double ny = dx[k] * ROOM_MM;
            grid.near(x[k] - nx, y[k] - ny, x[k] + nx, y[k] + ny, s -> narrow(k, pieces, s));
        }
    }

    /** Takes a piece into account if it crosses the normal of probe k. */
    private void narrow(int k, double[] pieces, int s) {
        double ax = pieces[s] - x[k];
        double ay = pieces[s + 1] - y[k];
        double bx = pieces[s + 2] - x[k];
        double by = pieces[s + 3] - y[k];
        double alongA = ax * dx[k] + ay * dy[k];
        double alongB = bx * dx[k] + by * dy[k];
        if (alongA * alongB > 0 || alongA == alongB) {
            return;
        }
        double share = alongA / (alongA - alongB);
        double across = (1 - share) * (ay * dx[k] - ax * dy[k]) + share * (by * dx[k] - bx * dy[k]);
        if (across > SAME_LINE_MM) {
            roomLeft[k] = (float) Math.min(roomLeft[k], across);
        } else if (across < -SAME_LINE_MM) {
            roomRight[k] = (float) Math.min(roomRight[k], -across);
        }
    }
}
