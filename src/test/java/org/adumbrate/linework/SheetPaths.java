package org.adumbrate.linework;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Scanner;
import org.adumbrate.geometry.PlanePoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;

/** Makes and reads paths on the sheet for tests. */
public final class SheetPaths {
    private SheetPaths() {}

    /** One path for each text such as {@code M 1 2 L 3 4 Z}. */
    public static List<VectorPath<SheetPoint>> of(String... texts) {
        return Arrays.stream(texts).map(SheetPaths::path).toList();
    }

    public static VectorPath<SheetPoint> path(String text) {
        return path(Space.SHEET, text);
    }

    /** Reads what {@link VectorPath#toString} writes. */
    public static <P extends PlanePoint> VectorPath<P> path(Space<P> space, String text) {
        VectorPath.Builder<P> path = VectorPath.in(space);
        Scanner words = new Scanner(text).useLocale(Locale.ROOT);
        while (words.hasNext()) {
            switch (words.next()) {
                case "M" -> path.moveTo(words.nextDouble(), words.nextDouble());
                case "L" -> path.lineTo(words.nextDouble(), words.nextDouble());
                case "C" ->
                    path.curveTo(
                            words.nextDouble(),
                            words.nextDouble(),
                            words.nextDouble(),
                            words.nextDouble(),
                            words.nextDouble(),
                            words.nextDouble());
                default -> path.close();
            }
        }
        return path.build();
    }

    public static VectorPath<SheetPoint> line(double x0, double y0, double x1, double y1) {
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        path.moveTo(x0, y0);
        path.lineTo(x1, y1);
        return path.build();
    }

    /** The straight pieces of paths, each as x, y, x, y. */
    public static List<double[]> segments(List<VectorPath<SheetPoint>> paths) {
        List<double[]> segments = new ArrayList<>();
        for (VectorPath<SheetPoint> path : paths) {
            path.pieces(piece -> {
                assertThat(piece.straight()).isTrue();
                segments.add(new double[] {piece.x0(), piece.y0(), piece.x3(), piece.y3()});
            });
        }
        return segments;
    }
}
