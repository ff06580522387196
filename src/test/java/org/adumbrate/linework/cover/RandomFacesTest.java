package org.adumbrate.linework.cover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.PathPiece;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.clip.FillRule;

/** Convex faces and strokes painted at random, compared with a look at many points of each stroke. */
class RandomFacesTest {
    private static final double CLEAR = 0.06;
    private static final int LOOKS = 400;

    /** A convex face by its corners, x and y. */
    private static final class Face {
        private final double[] corners;

        Face(double[] corners) {
            this.corners = corners;
        }

        /** How deep inside a point lies; negative outside, where it is no farther from the rim than that. */
        double depth(double x, double y) {
            double depth = Double.POSITIVE_INFINITY;
            for (int k = 0; k < corners.length; k += 2) {
                int next = (k + 2) % corners.length;
                double dx = corners[next] - corners[k];
                double dy = corners[next + 1] - corners[k + 1];
                double across = (dx * (y - corners[k + 1]) - dy * (x - corners[k])) / Math.hypot(dx, dy);
                depth = Math.min(depth, across);
            }
            return depth;
        }

        VectorPath<PagePoint> path() {
            VectorPath.Builder<PagePoint> path = VectorPath.in(Space.PAGE);
            path.moveTo(corners[0], corners[1]);
            for (int k = 2; k < corners.length; k += 2) {
                path.lineTo(corners[k], corners[k + 1]);
            }
            path.close();
            return path.build();
        }
    }

    @Property(tries = 60, seed = "1")
    void aPointIsSeenWhereNoLaterFaceLiesOverIt(@ForAll long seed) {
        Random random = new Random(seed);
        Painting painting = new Painting();
        List<Face> faces = new ArrayList<>();
        List<PathPiece> strokes = new ArrayList<>();
        List<Integer> facesBefore = new ArrayList<>();
        for (int k = 0; k < 60; k++) {
            if (random.nextInt(3) > 0) {
                Face face = face(random);
                faces.add(face);
                painting.cover(face.path(), random.nextBoolean() ? FillRule.NON_ZERO : FillRule.EVEN_ODD);
            } else {
                PathPiece stroke = stroke(random, faces);
                strokes.add(stroke);
                facesBefore.add(faces.size());
                painting.stroke(path(stroke));
            }
        }
        HiddenLines seen = painting.seen();
        for (int k = 0; k < strokes.size(); k++) {
            compare(strokes.get(k), faces.subList(facesBefore.get(k), faces.size()), painting.seenOf(seen, k));
        }
    }

    private static void compare(PathPiece stroke, List<Face> later, Optional<VectorPath<PagePoint>> seen) {
        for (int look = 0; look <= LOOKS; look++) {
            double t = (double) look / LOOKS;
            double x = stroke.xAt(t);
            double y = stroke.yAt(t);
            double[] depths =
                    later.stream().mapToDouble(face -> face.depth(x, y)).toArray();
            if (Arrays.stream(depths).noneMatch(depth -> Math.abs(depth) < CLEAR)) {
                boolean hidden = Arrays.stream(depths).anyMatch(depth -> depth > 0);
                assertThat(seen.isPresent() && isOn(seen.get(), x, y))
                        .as("(%s, %s) of %s behind %d faces", x, y, stroke, later.size())
                        .isEqualTo(!hidden);
            }
        }
    }

    private static boolean isOn(VectorPath<PagePoint> path, double x, double y) {
        boolean[] on = new boolean[1];
        path.chords(1e-4, (x0, y0, x1, y1) -> {
            double dx = x1 - x0;
            double dy = y1 - y0;
            double t = Math.max(0, Math.min(1, ((x - x0) * dx + (y - y0) * dy) / (dx * dx + dy * dy)));
            on[0] |= Math.hypot(x - x0 - t * dx, y - y0 - t * dy) < 1e-3;
        });
        return on[0];
    }

    private static Face face(Random random) {
        int corners = 3 + random.nextInt(5);
        double[] turns = random.doubles(corners, 0, 2 * Math.PI).sorted().toArray();
        double x = 50 + random.nextInt(300);
        double y = 50 + random.nextInt(300);
        double radius = 5 + random.nextInt(60);
        double[] points = new double[2 * corners];
        for (int k = 0; k < corners; k++) {
            points[2 * k] = x + radius * Math.cos(turns[k]);
            points[2 * k + 1] = y + radius * Math.sin(turns[k]);
        }
        return new Face(points);
    }

    /** A line or a gentle curve, now and then from corner to corner of faces. */
    private static PathPiece stroke(Random random, List<Face> faces) {
        double[] ends = random.doubles(4, 20, 380).toArray();
        Optional<Face> face = faces.isEmpty() ? Optional.empty() : Optional.of(faces.get(random.nextInt(faces.size())));
        if (face.isPresent() && random.nextBoolean()) {
            ends[0] = face.get().corners[0];
            ends[1] = face.get().corners[1];
        }
        if (random.nextBoolean()) {
            return PathPiece.line(ends[0], ends[1], ends[2], ends[3]);
        }
        double dx = (ends[2] - ends[0]) / 3;
        double dy = (ends[3] - ends[1]) / 3;
        return PathPiece.curve(
                ends[0],
                ends[1],
                ends[0] + dx - dy,
                ends[1] + dy + dx,
                ends[2] - dx - dy,
                ends[3] - dy + dx,
                ends[2],
                ends[3]);
    }

    private static VectorPath<PagePoint> path(PathPiece piece) {
        VectorPath.Builder<PagePoint> path = VectorPath.in(Space.PAGE);
        path.moveTo(piece.x0(), piece.y0());
        piece.drawOn(path);
        return path.build();
    }
}
