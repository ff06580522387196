package org.adumbrate.geometry;

/** Receives a path piece by piece, run by run. */
@FunctionalInterface
public interface PieceVisitor {
    /** Receives a straight or curved piece; it may have no length. */
    void piece(PathPiece piece);

    /** A run begins here, and a piece of it follows; moves that nothing follows are passed over. */
    default void begin(double x, double y) {}

    /** Receives the straight piece that a closing step is; it has no length where the run is back already. */
    default void closing(PathPiece piece) {
        piece(piece);
    }

    /**
     * A run ends.
     *
     * @param closed whether with a closing step, which has been received by then
     */
    default void end(boolean closed) {}
}
