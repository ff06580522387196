package org.adumbrate.geometry;

/** Walks along a path and knows at each step where it comes from. After a closing step it stands where the run began. */
abstract class PathWalk implements VectorPath.Visitor {
    private double startX;
    private double startY;
    private double x;
    private double y;
    private boolean drawing;

    abstract void begin(double atX, double atY);

    abstract void line(double x0, double y0, double x1, double y1);

    abstract void curve(double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3);

    abstract void closing(double x0, double y0, double x1, double y1);

    abstract void end(boolean closed);

    final void along(VectorPath<?> path) {
        path.visit(this);
        stop(false);
    }

    @Override
    public final void moveTo(double toX, double toY) {
        stop(false);
        startX = x = toX;
        startY = y = toY;
    }

    @Override
    public final void lineTo(double toX, double toY) {
        start();
        line(x, y, toX, toY);
        x = toX;
        y = toY;
    }

    @Override
    public final void curveTo(double x1, double y1, double x2, double y2, double toX, double toY) {
        start();
        curve(x, y, x1, y1, x2, y2, toX, toY);
        x = toX;
        y = toY;
    }

    @Override
    public final void close() {
        start();
        closing(x, y, startX, startY);
        x = startX;
        y = startY;
        stop(true);
    }

    private void start() {
        if (!drawing) {
            drawing = true;
            begin(x, y);
        }
    }

    private void stop(boolean closed) {
        if (drawing) {
            drawing = false;
            end(closed);
        }
    }

    /** Hands out pieces. */
    static final class ByPieces extends PathWalk {
        private final PieceVisitor visitor;

        ByPieces(PieceVisitor visitor) {
            this.visitor = visitor;
        }

        @Override
        void begin(double atX, double atY) {
            visitor.begin(atX, atY);
        }

        @Override
        void line(double x0, double y0, double x1, double y1) {
            visitor.piece(PathPiece.line(x0, y0, x1, y1));
        }

        @Override
        void curve(double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3) {
            visitor.piece(PathPiece.curve(x0, y0, x1, y1, x2, y2, x3, y3));
        }

        @Override
        void closing(double x0, double y0, double x1, double y1) {
            visitor.closing(PathPiece.line(x0, y0, x1, y1));
        }

        @Override
        void end(boolean closed) {
            visitor.end(closed);
        }
    }

    /** Hands out straight lines, curves as chords; makes no object for each of them. */
    static final class ByChords extends PathWalk {
        private final double tolerance;
        private final ChordVisitor visitor;

        ByChords(double tolerance, ChordVisitor visitor) {
            this.tolerance = tolerance;
            this.visitor = visitor;
        }

        @Override
        void begin(double atX, double atY) {
            // a line follows that says where
        }

        @Override
        void line(double x0, double y0, double x1, double y1) {
            visitor.chord(x0, y0, x1, y1);
        }

        @Override
        void curve(double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3) {
            Flattener.chords(x0, y0, x1, y1, x2, y2, x3, y3, tolerance, visitor);
        }

        @Override
        void closing(double x0, double y0, double x1, double y1) {
            visitor.chord(x0, y0, x1, y1);
        }

        @Override
        void end(boolean closed) {
            // nothing is held back
        }
    }
}
