package org.adumbrate.benchmark;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.figure.depth.DepthScale;
import org.adumbrate.figure.shadow.Casting;
import org.adumbrate.figure.shadow.FigureShadow;
import org.adumbrate.figure.shadow.Receiver;
import org.adumbrate.figure.shadow.SliceSolid;
import org.adumbrate.figure.shadow.StandingSolid;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.ModelPoint;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.Stroke;
import org.adumbrate.linework.read.LineSheets;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.View;
import org.adumbrate.raster.OrderedStrips;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.StoredNumbers;
import org.adumbrate.raster.decode.RasterFiles;

/**
 * Times the shadows of a scene's figures in a process of their own, and writes them for comparison:
 *
 * <pre>
 *   FigureShadowRun SCENE.txt WIDTH THREADS [--depth DEPTH.png [--lines LINES.pdf]] [--output OUT.pgm]
 * </pre>
 *
 * The scene is told in lines of words and numbers: {@code view focal x0 y0 eye turn}, {@code sun azimuth altitude north},
 * {@code sheet width height}, {@code depth near far} and the six numbers of its placement, and for each figure
 * {@code figure x y z turn stature height} and the corners of its outline.
 */
public final class FigureShadowRun {
    private static final int STRIP = 64;

    private View view;
    private SunDirection sun;
    private SheetSize sheet;
    private DepthScale scale;
    private Affine<RasterPoint, SheetPoint> placement;
    private final List<StandingSolid> figures = new ArrayList<>();

    private FigureShadowRun() {}

    /** Runs once. */
    public static void main(String[] args) throws IOException {
        Clock begin = Clock.now();
        FigureShadowRun run = new FigureShadowRun();
        for (String line : Files.readAllLines(Path.of(args[0]))) {
            run.read(line);
        }
        List<String> options = Arrays.asList(args);
        int width = Integer.parseInt(args[1]);
        PixelSize canvas = new PixelSize(width, (int) Math.round(width * run.sheet.heightMm() / run.sheet.widthMm()));
        List<Casting> castings = options.contains("--depth")
                ? run.onSurfaces(after("--depth", options).orElseThrow(), after("--lines", options))
                : run.onFloors();
        Clock read = Clock.now();
        FigureShadow shadow = FigureShadow.of(run.view, run.sun, Canvas.whole(run.sheet, canvas), castings);
        Clock prepared = Clock.now();
        double sum = 0;
        for (int k = options.contains("--again") ? 0 : 9; k < 10; k++) {
            Clock before = Clock.now();
            sum = render(shadow, Integer.parseInt(args[2]), after("--output", options));
            System.out.println(Clock.now().since(before));
        }
        Clock done = Clock.now();
        System.out.printf(
                "%d figures, %s: read %s, prepared %s, computed %s; %.1f pixels of shadow%n",
                run.figures.size(),
                canvas,
                read.since(begin),
                prepared.since(read),
                done.since(prepared),
                canvas.count() - sum);
    }

    /** The time on the wall and the time that all threads have spent, compilers included; in ns. */
    private record Clock(long wall, long spent) {
        static Clock now() {
            var machine = (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
            return new Clock(System.nanoTime(), machine.getProcessCpuTime());
        }

        String since(Clock before) {
            return "%.0f ms (%.0f ms spent)".formatted((wall - before.wall) / 1e6, (spent - before.spent) / 1e6);
        }
    }

    private static Optional<Path> after(String option, List<String> options) {
        int at = options.indexOf(option);
        return at < 0 ? Optional.empty() : Optional.of(Path.of(options.get(at + 1)));
    }

    private void read(String line) {
        String[] words = line.split(" ");
        double[] n =
                Arrays.stream(words).skip(1).mapToDouble(Double::parseDouble).toArray();
        switch (words[0]) {
            case "view" -> view = new View(n[0], new SheetPoint(n[1], n[2]), n[3], n[4]);
            case "sun" -> sun = SunDirection.of(n[0], n[1], n[2]);
            case "sheet" -> sheet = new SheetSize(n[0], n[1]);
            case "depth" -> {
                scale = new DepthScale(n[0], n[1]);
                placement = new Affine<>(Space.RASTER, Space.SHEET, n[2], n[3], n[4], n[5], n[6], n[7]);
            }
            default -> figures.add(figure(n));
        }
    }

    private static StandingSolid figure(double[] n) {
        VectorPath.Builder<PagePoint> path = VectorPath.in(Space.PAGE);
        path.moveTo(n[6], n[7]);
        for (int k = 8; k < n.length; k += 2) {
            path.lineTo(n[k], n[k + 1]);
        }
        path.close();
        SliceSolid solid = SliceSolid.of(Region.evenOdd(path.build(), 1), n[5], n[4]);
        return new StandingSolid(new ModelPoint(n[0], n[1], n[2]), n[3], false, solid);
    }

    private List<Casting> onSurfaces(Path file, Optional<Path> lines) throws IOException {
        List<VectorPath<SheetPoint>> edges = new ArrayList<>();
        if (lines.isPresent()) {
            for (Stroke stroke : LineSheets.read(lines.get()).strokes()) {
                edges.add(stroke.path().transform(Affine.identity(Space.PAGE, Space.SHEET)));
            }
        }
        try (RasterReader reader = RasterFiles.open(file)) {
            DepthMap depth = DepthMap.of(StoredNumbers.read(reader, 64_000_000), scale, placement);
            return List.of(new Casting(new Receiver.Surfaces(depth, edges), figures));
        }
    }

    private List<Casting> onFloors() {
        Map<Double, List<StandingSolid>> floors = new TreeMap<>();
        figures.forEach(figure -> floors.computeIfAbsent(figure.foot().z(), z -> new ArrayList<>())
                .add(figure));
        return floors.entrySet().stream()
                .map(floor -> new Casting(new Receiver.Floor(floor.getKey(), Optional.empty()), floor.getValue()))
                .toList();
    }

    private static double render(FigureShadow shadow, int threads, Optional<Path> output) throws IOException {
        double[] sum = {0};
        int width = shadow.size().width();
        int height = shadow.size().height();
        try (OutputStream out = output.isPresent()
                ? new BufferedOutputStream(Files.newOutputStream(output.get()))
                : OutputStream.nullOutputStream()) {
            out.write("P5 %d %d 65535\n".formatted(width, height).getBytes(StandardCharsets.US_ASCII));
            OrderedStrips.<float[], float[]>run(
                    (height + STRIP - 1) / STRIP,
                    threads,
                    () -> new float[width * STRIP],
                    (buffer, strip) -> {
                        int rows = Math.min(STRIP, height - strip * STRIP);
                        for (int row = 0; row < rows; row++) {
                            float[] line = new float[width];
                            shadow.read(0, strip * STRIP + row, width, 1, line);
                            System.arraycopy(line, 0, buffer, row * width, width);
                        }
                        return Arrays.copyOf(buffer, rows * width);
                    },
                    (strip, light) -> {
                        for (float value : light) {
                            sum[0] += value;
                            if (output.isPresent()) {
                                int code = Math.round(value * 65535);
                                out.write(code >> 8);
                                out.write(code);
                            }
                        }
                    });
        }
        return sum[0];
    }
}
