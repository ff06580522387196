package org.adumbrate.linework.clip;

import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.PieceVisitor;
import org.adumbrate.geometry.VectorPath;

/** An upright rectangle; empty when a side has shrunk below zero. */
record Window(double left, double top, double right, double bottom) implements Aperture {
    /** The rectangle that a path draws, if it draws an upright one and nothing else. */
    static Optional<Window> drawnBy(VectorPath<?> path) {
        if (path.runs() != 1 || path.segments() < 3 || path.segments() > 5) {
            return Optional.empty();
        }
        Bounds box = Bounds.of(path);
        Window window = new Window(box.left(), box.top(), box.right(), box.bottom());
        RectangleTest test = new RectangleTest(window);
        path.pieces(test);
        return test.passed() ? Optional.of(window) : Optional.empty();
    }

    Window intersection(Window other) {
        return new Window(
                Math.max(left, other.left),
                Math.max(top, other.top),
                Math.min(right, other.right),
                Math.min(bottom, other.bottom));
    }

    @Override
    public List<FlatOutline> outlines() {
        return List.of(FlatOutline.rectangle(left, top, right, bottom));
    }

    @Override
    public Coverage coverage(Bounds box) {
        if (right < left || bottom < top || !box.meets(left, top, right, bottom, TOLERANCE)) {
            return Coverage.NOTHING;
        }
        return holds(box.left(), box.top()) && holds(box.right(), box.bottom()) ? Coverage.WHOLE : Coverage.PART;
    }

    @Override
    public void crossings(PathPiece piece, Splits splits) {
        SideChanges.note(piece, 1, 0, left, splits);
        SideChanges.note(piece, 1, 0, right, splits);
        SideChanges.note(piece, 0, 1, top, splits);
        SideChanges.note(piece, 0, 1, bottom, splits);
    }

    @Override
    public boolean holds(double x, double y) {
        return x >= left - TOLERANCE && x <= right + TOLERANCE && y >= top - TOLERANCE && y <= bottom + TOLERANCE;
    }

    /** Whether a path goes once around a rectangle, from corner to corner along the sides. */
    private static final class RectangleTest implements PieceVisitor {
        private static final double EXACT = 1e-6;

        private final Window window;
        private double startX;
        private double startY;
        private double x;
        private double y;
        private double turned;
        private boolean along = true;

        RectangleTest(Window window) {
            this.window = window;
        }

        /** Going once along all four sides sweeps the rectangle's own area; anything less does not. */
        boolean passed() {
            double area = (window.right - window.left) * (window.bottom - window.top);
            return along && Math.abs(Math.abs(turned) / 2 - area) <= EXACT * (1 + area);
        }

        @Override
        public void begin(double atX, double atY) {
            startX = atX;
            startY = atY;
        }

        @Override
        public void piece(PathPiece piece) {
            along &= piece.straight()
                    && onSide(piece.x3(), window.left, window.right)
                    && onSide(piece.y3(), window.top, window.bottom)
                    && (Math.abs(piece.x3() - piece.x0()) < EXACT || Math.abs(piece.y3() - piece.y0()) < EXACT);
            turned += piece.x0() * piece.y3() - piece.y0() * piece.x3();
            x = piece.x3();
            y = piece.y3();
        }

        /** What is filled is closed, whether it is drawn so or not. */
        @Override
        public void end(boolean closed) {
            turned += x * startY - y * startX;
        }

        private static boolean onSide(double value, double low, double high) {
            return value - low < EXACT || high - value < EXACT;
        }
    }
}
