package org.adumbrate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.cleanup.CleanUp;
import org.adumbrate.linework.cleanup.CleanUpSettings;
import org.adumbrate.linework.cleanup.Cleaned;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The clean-up of one pen's short strokes on a sheet of 17 x 11 in, the growth in time beside the growth in number. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3)
@Measurement(iterations = 5)
@Fork(1)
public class CleanUpBenchmark {
    /** How many strokes. */
    @Param({"15000", "60000", "240000"})
    public int strokes;

    private List<VectorPath<SheetPoint>> paths;

    /** Strokes of 0.7 to 8.5 mm, a quarter each level, upright, at 45 degrees and in any direction. */
    @Setup
    public void draw() {
        Random random = new Random(1);
        paths = new ArrayList<>();
        for (int n = 0; n < strokes; n++) {
            double x = 431.8 * random.nextDouble();
            double y = 279.4 * random.nextDouble();
            double length = 0.7 + 7.8 * random.nextDouble();
            double angle = n % 4 == 3 ? random.nextDouble() * 2 * Math.PI : n % 4 * Math.PI / 4;
            VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
            path.moveTo(x, y);
            path.lineTo(x + length * Math.cos(angle), y + length * Math.sin(angle));
            paths.add(path.build());
        }
    }

    /** Everything on. */
    @Benchmark
    public Cleaned cleanUp() {
        return CleanUp.run(paths, CleanUpSettings.STANDARD);
    }
}
