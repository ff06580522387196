package org.adumbrate.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.perspective.View;
import org.junit.jupiter.api.Test;

/** Lines of a model, seen by a pinhole: the truth is the view that drew them. */
class CentralPointTest {
    private static final SheetPoint PRINCIPAL = new SheetPoint(184, 181);

    private final Random random = new Random(1);

    private double between(double least, double most) {
        return least + random.nextDouble() * (most - least);
    }

    /** Edges along the model's axes, and slopes of roofs across them, within a few metres before the viewer. */
    private List<VectorPath<SheetPoint>> edges(View view) {
        List<VectorPath<SheetPoint>> edges = new ArrayList<>();
        for (int k = 0; k < 300; k++) {
            ModelPoint from = new ModelPoint(between(-5, 5), between(10, 16), between(0, 6));
            double length = between(0.5, 3);
            ModelPoint to =
                    switch (k % 4) {
                        case 0 -> new ModelPoint(from.x() + length, from.y(), from.z());
                        case 1 -> new ModelPoint(from.x(), from.y() + 3 * length, from.z());
                        case 2 -> new ModelPoint(from.x(), from.y(), from.z() + length);
                        default -> new ModelPoint(from.x() + length, from.y(), from.z() + between(-1, 1) * length);
                    };
            SheetPoint a = view.project(from).orElseThrow();
            SheetPoint b = view.project(to).orElseThrow();
            VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
            path.moveTo(a.x() + between(-0.02, 0.02), a.y() + between(-0.02, 0.02));
            path.lineTo(b.x() + between(-0.02, 0.02), b.y() + between(-0.02, 0.02));
            edges.add(path.build());
        }
        return edges;
    }

    @Test
    void onePointViewsMeetAtThePrincipalPoint() {
        View view = new View(247, PRINCIPAL, 1.55, 0);
        SheetPoint found = CentralPoint.of(edges(view), PRINCIPAL.y() + 0.8).orElseThrow();
        assertThat(found.distanceTo(PRINCIPAL)).isLessThan(0.1);
    }

    @Test
    void twoPointViewsMeetAtNoOnePoint() {
        View view = new View(247, PRINCIPAL, 1.55, Math.toRadians(45));
        List<VectorPath<SheetPoint>> edges = new ArrayList<>();
        for (int k = 0; k < 300; k++) {
            double depth = between(10, 16);
            ModelPoint from = view.at(new SheetPoint(between(100, 300), between(100, 260)), depth);
            double length = between(0.5, 3);
            ModelPoint to = k % 2 == 0
                    ? new ModelPoint(from.x() + length, from.y(), from.z())
                    : new ModelPoint(from.x(), from.y() + length, from.z());
            SheetPoint a = view.project(from).orElseThrow();
            SheetPoint b = view.project(to).orElseThrow();
            VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
            path.moveTo(a.x(), a.y());
            path.lineTo(b.x(), b.y());
            edges.add(path.build());
        }
        assertThat(CentralPoint.of(edges, PRINCIPAL.y())).isEmpty();
    }

    @Test
    void noLinesNoPoint() {
        assertThat(CentralPoint.of(List.of(), 100)).isEmpty();
    }
}
