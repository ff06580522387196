package org.adumbrate.linework.region;

import java.util.BitSet;
import org.adumbrate.linework.region.LineGraph.Edge;

/**
 * Faces that lie within a loop of own lines which other lines close. On which side of an open line its inside lies is told
 * by how it looks from a face: from within, an outline bends around the face; and lines that end at it, hidden by what it
 * outlines, are seen from outside only.
 */
final class OpenLoops {
    /** Sharper turns than this, in degrees, are corners where two outlines meet, which may point either way. */
    private static final double BEND = 40;
    /** A face is inside if the own lines around it bend by at least this, in degrees, all told. */
    private static final double LEAST_BEND = 25;
    /** A face with straight own lines is inside only if they are this share of its bounds. */
    private static final double LEAST_SHARE = 0.4;
    /** What a line that ends at the outline counts for, in degrees. */
    private static final double HIDDEN_LINE = 90;

    private final Faces faces;
    private final double[] bends;
    private final double[] corners;
    private final double[] perimeterMm;
    private final double[] ownMm;
    private final int[] hidden;
    private final BitSet beside = new BitSet();

    private OpenLoops(Faces faces) {
        this.faces = faces;
        this.bends = new double[faces.count()];
        this.corners = new double[faces.count()];
        this.perimeterMm = new double[faces.count()];
        this.ownMm = new double[faces.count()];
        this.hidden = new int[faces.count()];
    }

    /** The faces inside; all around is never. */
    static BitSet inside(Faces faces) {
        OpenLoops loops = new OpenLoops(faces);
        for (int side = 0; side < faces.sides(); side++) {
            loops.look(side);
        }
        BitSet inside = new BitSet();
        for (int face = loops.beside.nextSetBit(1); face >= 0; face = loops.beside.nextSetBit(face + 1)) {
            inside.set(face, loops.isInside(face));
        }
        return inside;
    }

    private boolean isInside(int face) {
        double bend = bends[face] - HIDDEN_LINE * hidden[face];
        boolean straight = Math.abs(bends[face]) < LEAST_BEND && hidden[face] == 0;
        return straight
                ? corners[face] >= LEAST_BEND && ownMm[face] >= LEAST_SHARE * perimeterMm[face]
                : bend >= LEAST_BEND;
    }

    private void look(int side) {
        int onward = faces.next(side);
        int face = faces.face(side);
        boolean own = isOwn(side);
        double length = faces.graph().lengthMm(faces.edge(side));
        perimeterMm[face] += length;
        if (own) {
            beside.set(face);
            ownMm[face] += length;
        }
        if (own && isOwn(onward)) {
            double turn = turn(side, onward);
            if (Math.abs(turn) <= BEND) {
                bends[face] += turn;
            } else {
                corners[face] += turn;
            }
        } else if (own != isOwn(onward) && endsAtOutline(faces.start(onward))) {
            hidden[face]++;
        }
    }

    private boolean isOwn(int side) {
        return faces.edge(side).kind() == Kind.OWN;
    }

    /** True in a corner that an own line goes through and where a single other line ends. */
    private boolean endsAtOutline(int corner) {
        LineGraph graph = faces.graph();
        int own = 0;
        int others = 0;
        for (int k = 0; k < graph.degree(corner); k++) {
            Edge edge = graph.edges().get(graph.incident(corner, k));
            own += edge.kind() == Kind.OWN ? 1 : 0;
            others += edge.kind() == Kind.OTHER ? 1 : 0;
        }
        return own >= 2 && others == 1;
    }

    /** By how many degrees the way around the face turns toward the face. */
    private double turn(int side, int onward) {
        LineGraph graph = faces.graph();
        double x0 = graph.dx(side);
        double y0 = graph.dy(side);
        double x1 = graph.dx(onward);
        double y1 = graph.dy(onward);
        return Math.toDegrees(Math.atan2(x0 * y1 - y0 * x1, x0 * x1 + y0 * y1));
    }
}
