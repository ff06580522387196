package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/** Edges of a building as a view shows them, ends 0.02 mm off: along the model's axes, and slopes of roofs across them. */
final class DrawnEdges {
    private final Random random;
    private final View view;

    DrawnEdges(long seed, View view) {
        random = new Random(seed);
        this.view = view;
    }

    private double between(double least, double most) {
        return least + random.nextDouble() * (most - least);
    }

    List<VectorPath<SheetPoint>> draw(int count) {
        List<VectorPath<SheetPoint>> edges = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            ModelPoint from = view.at(
                    new SheetPoint(
                            view.principal().x() + between(-120, 120),
                            view.principal().y() + between(-80, 80)),
                    between(10, 16));
            double length = between(0.5, 3);
            ModelPoint to =
                    switch (k % 4) {
                        case 0 -> new ModelPoint(from.x() + length, from.y(), from.z());
                        case 1 -> new ModelPoint(from.x(), from.y() + length, from.z());
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
}
