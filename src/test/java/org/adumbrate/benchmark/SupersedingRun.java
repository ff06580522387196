package org.adumbrate.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.IntFunction;
import org.adumbrate.cli.DemoCopy;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Superseded;
import org.adumbrate.prepare.open.Edition;
import org.adumbrate.prepare.open.OpenSheet;
import org.adumbrate.prepare.picture.SheetPicture;
import org.adumbrate.sheetfile.edit.Edit;
import org.adumbrate.sheetfile.edit.EditResult;
import org.adumbrate.sheetfile.edit.SheetText;
import org.adumbrate.sheetfile.yaml.YamlText;

/**
 * Times how soon the work on a picture ends once a newer edition of the sheet takes its place, at a random moment of it, in a warm process on a
 * copy of the demo:
 *
 * <pre>
 *   SupersedingRun [ROUNDS]
 * </pre>
 *
 * Prints the median, the 95th percentile and the longest in ms, of the rounds in which the work was still going on.
 */
public final class SupersedingRun {
    private static final int WIDTH = 1600;

    private final OpenSheet open;
    private final SheetText text;
    private final Random random = new Random(7);
    private int turn;

    private SupersedingRun(Path sheet) throws IOException {
        this.open = OpenSheet.of(sheet, Memory.inMemory());
        this.text = SheetText.read(sheet);
    }

    /** Runs it. */
    public static void main(String[] args) throws Exception {
        Path folder = Files.createTempDirectory("superseding");
        Path sheet = DemoCopy.kilnYard(folder).resolve("kiln-yard.sheet.yaml");
        new SupersedingRun(sheet).run(args.length > 0 ? Integer.parseInt(args[0]) : 60);
    }

    private static Map<String, IntFunction<Edit>> edits() {
        Map<String, IntFunction<Edit>> edits = new LinkedHashMap<>();
        edits.put("pen's width", k -> new Edit.Set("pens.furniture.width", "0." + (100 + k % 800) + " mm"));
        edits.put("figure moved", k -> new Edit.Set("figures[0].foot", "[" + (330.0 + k / 500.0) + ", 228.3]"));
        edits.put(
                "region's corner",
                k -> new Edit.Set(
                        "regions.bed", "[[" + (350.0 + k / 500.0) + ", 214.5], [430, 214.5], [430, 223], [366, 223]]"));
        edits.put("sun", k -> new Edit.Set("sun.azimuth", String.valueOf(150 + k / 80.0)));
        edits.put("all of it", k -> new Edit.Set("size", (431 + k / 500.0) + " x 279.4 mm"));
        return edits;
    }

    private void run(int rounds) throws Exception {
        System.out.printf("%-16s %8s %8s %8s   %s%n", "ms", "median", "p95", "longest", "rounds, the work alone");
        for (Map.Entry<String, IntFunction<Edit>> kind : edits().entrySet()) {
            for (int k = 0; k < 10; k++) {
                alone(kind.getValue());
            }
            double alone = alone(kind.getValue());
            List<Double> ends = new ArrayList<>();
            for (int k = 0; k < rounds; k++) {
                double end = superseded(kind.getValue(), random.nextDouble() * alone);
                if (end >= 0) {
                    ends.add(end);
                }
            }
            List<Double> sorted = ends.stream().sorted().toList();
            System.out.printf(
                    Locale.ROOT,
                    "%-16s %8.1f %8.1f %8.1f   %d, %.0f%n",
                    kind.getKey(),
                    sorted.get(sorted.size() / 2),
                    sorted.get((int) (0.95 * sorted.size())),
                    sorted.get(sorted.size() - 1),
                    sorted.size(),
                    alone);
        }
    }

    /** Milliseconds of the whole work. */
    private double alone(IntFunction<Edit> edit) throws IOException, Refusal {
        picture(next(new Edit.Set("passes.shadow.opacity", "50")));
        long begin = System.nanoTime();
        picture(next(edit.apply(turn++)));
        return (System.nanoTime() - begin) / 1e6;
    }

    /** Milliseconds from a newer edition to the end of the work on the older one; negative if that had ended before. */
    private double superseded(IntFunction<Edit> edit, double afterMs) throws Exception {
        picture(next(new Edit.Set("passes.shadow.opacity", "50")));
        Edition older = next(edit.apply(turn++));
        CompletableFuture<Long> end = CompletableFuture.supplyAsync(() -> {
            try {
                picture(older);
                return -1L;
            } catch (Superseded newer) {
                return System.nanoTime();
            } catch (IOException | Refusal trouble) {
                throw new IllegalStateException(trouble);
            }
        });
        TimeUnit.MICROSECONDS.sleep((long) (1000 * afterMs));
        long begin = System.nanoTime();
        next(new Edit.Set("passes.shadow.opacity", "60"));
        long ended = end.get();
        return ended < 0 ? -1 : (ended - begin) / 1e6;
    }

    private Edition next(Edit edit) {
        if (!(text.edited(List.of(edit)) instanceof EditResult.Edited edited)) {
            throw new IllegalStateException("refused: " + edit);
        }
        return open.edition(YamlText.unmarked(edited.text().text()));
    }

    private static void picture(Edition edition) throws IOException, Refusal {
        edition.make((sheet, run) -> {
            PixelSize whole = sheet.size().pixelsAt(WIDTH * 25.4 / sheet.size().widthMm());
            return SheetPicture.of(sheet, Canvas.whole(sheet.size(), whole), run)
                    .levels(run);
        });
    }
}
