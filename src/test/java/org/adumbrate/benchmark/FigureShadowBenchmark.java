package org.adumbrate.benchmark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.adumbrate.figure.shadow.Casting;
import org.adumbrate.figure.shadow.FigureShadow;
import org.adumbrate.figure.shadow.Receiver;
import org.adumbrate.figure.shadow.SliceSolid;
import org.adumbrate.figure.shadow.StandingSolid;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.View;
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

/** What the shadows of 12 figures on a floor cost on one thread, at three widths of a 17 x 11 in sheet. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FigureShadowBenchmark {
    private static final SheetSize SHEET = new SheetSize(431.8, 279.4);
    private static final View VIEW = new View(260, new SheetPoint(214, 150.5), 4.25, 0);
    private static final SunDirection SUN = SunDirection.of(190, 35, 24);

    /** Pixels across the sheet. */
    @Param({"2550", "5100", "10200"})
    public int width;

    private FigureShadow shadow;
    private float[] row;

    /** Sets twelve figures on the ground. */
    @Setup
    public void prepare() {
        shadow = cast();
        row = new float[width];
    }

    private FigureShadow cast() {
        Region<PagePoint> body = Region.rectangle(Space.PAGE, -8, -175, 12, -150)
                .union(Region.rectangle(Space.PAGE, -25, -150, 20, -80))
                .union(Region.rectangle(Space.PAGE, -20, -80, -4, 0))
                .union(Region.rectangle(Space.PAGE, 4, -80, 18, 0));
        SliceSolid solid = SliceSolid.of(body, 175, 1.75);
        List<StandingSolid> figures = new ArrayList<>();
        for (int k = 0; k < 12; k++) {
            figures.add(new StandingSolid(new ModelPoint(1.6 * k - 9, 14 + k % 4 * 2, 0), k, false, solid));
        }
        Receiver ground = new Receiver.Floor(0, Optional.empty());
        return FigureShadow.of(
                VIEW,
                SUN,
                Canvas.whole(SHEET, new PixelSize(width, width * 11 / 17)),
                List.of(new Casting(ground, figures)));
    }

    /** Makes ready what does not depend on the number of pixels. */
    @Benchmark
    public FigureShadow prepareFigures() {
        return cast();
    }

    /** Computes every row. */
    @Benchmark
    public float allRows() {
        float sum = 0;
        for (int y = 0; y < shadow.size().height(); y++) {
            shadow.read(0, y, width, 1, row);
            sum += row[y % width];
        }
        return sum;
    }
}
