package org.adumbrate.geometry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class PathPieceTest {
    @Property(seed = "1", tries = 200)
    void aPartRunsAlongItsPiece(
            @ForAll @Size(8) List<@DoubleRange(min = -100, max = 100) Double> p,
            @ForAll @DoubleRange(min = 0, max = 1) double from,
            @ForAll @DoubleRange(min = 0, max = 1) double to,
            @ForAll @DoubleRange(min = 0, max = 1) double t,
            @ForAll boolean straight) {
        PathPiece piece = straight
                ? PathPiece.line(p.get(0), p.get(1), p.get(6), p.get(7))
                : PathPiece.curve(p.get(0), p.get(1), p.get(2), p.get(3), p.get(4), p.get(5), p.get(6), p.get(7));
        PathPiece part = piece.part(from, to);
        double place = from + t * (to - from);
        assertThat(part.xAt(t)).isCloseTo(piece.xAt(place), within(1e-9));
        assertThat(part.yAt(t)).isCloseTo(piece.yAt(place), within(1e-9));
    }

    @Test
    void endsAreExact() {
        PathPiece curve = PathPiece.curve(0.1, 0.2, 0.7, 0.3, 1.9, 1.1, 0.3, 2.3);
        assertThat(List.of(curve.xAt(0), curve.yAt(0), curve.xAt(1), curve.yAt(1)))
                .containsExactly(0.1, 0.2, 0.3, 2.3);
    }

    @Test
    void aPathIsWalkedRunByRun() {
        List<String> seen = new ArrayList<>();
        path().pieces(new PieceVisitor() {
            @Override
            public void begin(double x, double y) {
                seen.add("begin %.0f %.0f".formatted(x, y));
            }

            @Override
            public void piece(PathPiece piece) {
                seen.add("%s %.0f %.0f %.0f %.0f"
                        .formatted(
                                piece.straight() ? "line" : "curve", piece.x0(), piece.y0(), piece.x3(), piece.y3()));
            }

            @Override
            public void closing(PathPiece piece) {
                seen.add("closing %.0f %.0f %.0f %.0f".formatted(piece.x0(), piece.y0(), piece.x3(), piece.y3()));
            }

            @Override
            public void end(boolean closed) {
                seen.add(closed ? "closed" : "open");
            }
        });
        assertThat(seen)
                .as(
                        "a move that nothing follows is passed over, and after a closing step a run begins where the last did")
                .containsExactly(
                        "begin 0 0",
                        "line 0 0 4 0",
                        "curve 4 0 4 3",
                        "closing 4 3 0 0",
                        "closed",
                        "begin 0 0",
                        "line 0 0 0 1",
                        "open",
                        "begin 7 7",
                        "closing 7 7 7 7",
                        "closed");
    }

    private static VectorPath<SheetPoint> path() {
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        path.moveTo(9, 9);
        path.moveTo(0, 0);
        path.lineTo(4, 0);
        path.curveTo(5, 1, 5, 2, 4, 3);
        path.close();
        path.lineTo(0, 1);
        path.moveTo(7, 7);
        path.close();
        path.moveTo(8, 8);
        return path.build();
    }
}
