package org.adumbrate.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelBox;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.open.Edition;
import org.adumbrate.prepare.open.OpenSheet;
import org.adumbrate.prepare.picture.SheetPicture;
import org.adumbrate.raster.encode.Levels;
import org.adumbrate.sheetfile.edit.Edit;
import org.adumbrate.sheetfile.edit.EditResult;
import org.adumbrate.sheetfile.edit.SheetText;
import org.adumbrate.sheetfile.yaml.YamlText;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;

/**
 * Times what an edit of an open sheet takes, from the edit to the finished pixels, in a warm process on a copy of the demo:
 *
 * <pre>
 *   EditToPictureRun [ROUNDS]
 * </pre>
 *
 * Prints the median and the 95th percentile in ms for the whole sheet 1600 pixels wide, and for a window of as many pixels at four times
 * the scale. Of each round the first part tells what making the text and the sheet takes, the rest is the picture.
 */
public final class EditToPictureRun {
    private static final int WIDTH = 1600;

    private final Path sheet;
    private final int rounds;
    private final OpenSheet open;
    private SheetText text;

    /** Counts on through all rounds, so that none comes back to what an earlier one made. */
    private int turn;

    private EditToPictureRun(Path sheet, int rounds) throws IOException {
        this.sheet = sheet;
        this.rounds = rounds;
        this.open = OpenSheet.of(sheet, Memory.inMemory());
        this.text = SheetText.read(sheet);
    }

    /** Runs it. */
    public static void main(String[] args) throws Exception {
        Path folder = Files.createTempDirectory("edit-to-picture");
        try (Stream<Path> files = Files.list(Path.of("passes/kiln-yard"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
        int rounds = args.length > 0 ? Integer.parseInt(args[0]) : 40;
        new EditToPictureRun(folder.resolve("kiln-yard.sheet.yaml"), rounds).run();
    }

    private static Map<String, IntFunction<List<Edit>>> edits() {
        Map<String, IntFunction<List<Edit>>> edits = new LinkedHashMap<>();
        edits.put("opacity", k -> set("passes.shadow.opacity", 40 + k % 50));
        edits.put("tone", k -> set("passes.occlusion.tone", "[[0, " + (10 + k % 20) + "], [100, 100]]"));
        edits.put("pen's width", k -> set("pens.furniture.width", "0." + (10 + k % 30) + " mm"));
        edits.put("order", k -> List.of(new Edit.Move("pens.ground", k % 2 == 0 ? 0 : 5)));
        edits.put("figure moved", k -> set("figures[0].foot", "[" + (330.0 + k / 50.0) + ", 228.3]"));
        edits.put("figure turned", k -> set("figures[1].turn", (10 + k / 10.0) + " deg"));
        edits.put(
                "region's corner",
                k -> set(
                        "regions.bed", "[[" + (350.0 + k / 100.0) + ", 214.5], [430, 214.5], [430, 223], [366, 223]]"));
        edits.put("sun", k -> set("sun.azimuth", 150 + k / 8.0));
        edits.put("veil's opacity", k -> set("veils.trees.opacity", 30 + k % 40));
        return edits;
    }

    private static List<Edit> set(String key, Object value) {
        return List.of(new Edit.Set(key, value.toString()));
    }

    private void run() throws Exception {
        PreparedSheet first = edition().prepared();
        PixelSize whole = first.size().pixelsAt(WIDTH * 25.4 / first.size().widthMm());
        PixelSize large = new PixelSize(4 * whole.width(), 4 * whole.height());
        Canvas all = Canvas.whole(first.size(), whole);
        Canvas part = Canvas.whole(first.size(), large)
                .window(new PixelBox(
                        (large.width() - whole.width()) / 2, large.height() / 2, whole.width(), whole.height()));
        for (IntFunction<List<Edit>> edit : edits().values()) {
            measure(all, rounds / 2, edit);
            measure(part, rounds / 4, edit);
        }
        System.out.printf("%-16s %28s   %28s%n", "ms: median, p95", "whole (sheet)", "4x window (sheet)");
        for (Map.Entry<String, IntFunction<List<Edit>>> kind : edits().entrySet()) {
            System.out.printf("%-16s", kind.getKey());
            for (Canvas canvas : List.of(all, part)) {
                measure(canvas, 4, kind.getValue());
                tell(measure(canvas, rounds, kind.getValue()));
            }
            System.out.println();
        }
        System.out.printf("%-16s", "new lines");
        byte[] lines = Files.readAllBytes(sheet.resolveSibling("lines.pdf"));
        for (Canvas canvas : List.of(all, part)) {
            exports(lines, canvas, 3);
            tell(exports(lines, canvas, Math.max(5, rounds / 4)));
        }
        System.out.println();
    }

    private Edition edition() {
        return open.edition(YamlText.unmarked(text.text()));
    }

    /** Milliseconds of each round: until the sheet was ready, and until its picture was. */
    private List<double[]> measure(Canvas canvas, int count, IntFunction<List<Edit>> edits)
            throws IOException, Refusal {
        picture(edition(), canvas);
        SheetText before = text;
        List<double[]> times = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            long begin = System.nanoTime();
            EditResult result = text.edited(edits.apply(turn++));
            if (!(result instanceof EditResult.Edited edited)) {
                throw new IllegalStateException(result.toString());
            }
            text = edited.text();
            times.add(timed(begin, canvas));
        }
        text = before;
        return times;
    }

    private double[] timed(long begin, Canvas canvas) throws IOException, Refusal {
        Edition edition = edition();
        edition.prepared();
        long ready = System.nanoTime();
        picture(edition, canvas);
        return new double[] {(ready - begin) / 1e6, (System.nanoTime() - begin) / 1e6};
    }

    private static Levels picture(Edition edition, Canvas canvas) throws IOException, Refusal {
        return edition.make((ready, run) -> SheetPicture.of(ready, canvas, run).levels(run));
    }

    /** Exports in which every line lies a little elsewhere. */
    private List<double[]> exports(byte[] lines, Canvas canvas, int count) throws IOException, Refusal {
        List<double[]> times = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            try (PDDocument document = Loader.loadPDF(lines)) {
                try (PDPageContentStream shift = new PDPageContentStream(
                        document, document.getPage(0), PDPageContentStream.AppendMode.PREPEND, false)) {
                    shift.transform(Matrix.getTranslateInstance(0.002f * (System.nanoTime() % 997 + 1) / 997, 0));
                }
                document.save(sheet.resolveSibling("lines.pdf").toFile());
            }
            times.add(timed(System.nanoTime(), canvas));
        }
        return times;
    }

    private static void tell(List<double[]> times) {
        System.out.printf(
                Locale.ROOT,
                "   %7.1f %7.1f (%5.1f)    ",
                share(times, 1, 0.5),
                share(times, 1, 0.95),
                share(times, 0, 0.5));
    }

    private static double share(List<double[]> times, int part, double share) {
        double[] sorted =
                times.stream().mapToDouble(time -> time[part]).sorted().toArray();
        return sorted[(int) Math.min(sorted.length - 1, share * sorted.length)];
    }
}
