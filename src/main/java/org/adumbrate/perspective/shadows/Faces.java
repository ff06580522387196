package org.adumbrate.perspective.shadows;

import org.adumbrate.perspective.SunDirection;

/**
 * Faces of a building that lie across one of its axes. An edge that stands square on a face casts a straight shadow on it, whose
 * direction is the sun's as seen along that edge: with the face's normal N and the vector S toward the sun, S - (S·N) N. So
 * all edges along one axis cast, on all faces across it, shadows of one direction, which meet in one vanishing point of the
 * drawing. Edges along a face cast shadows parallel to themselves there, which tell nothing of the sun.
 */
enum Faces {
    /** Level faces seen from above: uprights cast their shadows on them. */
    FLOORS(1, 0),
    /** Upright faces that run into the drawing. */
    SIDE_WALLS(1, 2),
    /** Upright faces across the model's +Y. */
    FRONT_WALLS(0, 2);

    private final int first;
    private final int second;

    Faces(int first, int second) {
        this.first = first;
        this.second = second;
    }

    /** The number of the axis that the faces lie across: 0 of X, 1 of Y, 2 of Z. */
    int across() {
        return 3 - first - second;
    }

    /** The direction of a vector as it lies on the faces, in degrees, 0 to 180; its sense does not count. */
    double angle(double[] vector) {
        double angle = Math.toDegrees(Math.atan2(vector[second], vector[first]));
        return angle < 0 ? angle + 180 : angle >= 180 ? angle - 180 : angle;
    }

    /** The direction of the shadows that a sun casts on them. */
    double angle(SunDirection sun) {
        return angle(new double[] {sun.x(), sun.y(), sun.z()});
    }

    /** The difference of two directions, -90 to 90 degrees. */
    static double apart(double one, double other) {
        double apart = (one - other) % 180;
        return apart >= 90 ? apart - 180 : apart < -90 ? apart + 180 : apart;
    }
}
