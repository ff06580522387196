package org.adumbrate.linework.profile;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineSegment;

/** A straight piece of a line. */
record ProfileSegment(LineSegment line, Kind kind) {
    /** Whose line it is; of coinciding ones the first counts. */
    enum Kind {
        /** Drawn heavier than a profile anyway. */
        CUT,
        /** What a profile may run along. */
        BUILDING,
        /** Not drawn at all: it bridges a gap. */
        BRIDGE
    }

    static ProfileSegment of(Coordinate a, Coordinate b, Kind kind) {
        return new ProfileSegment(new LineSegment(a, b), kind);
    }
}
