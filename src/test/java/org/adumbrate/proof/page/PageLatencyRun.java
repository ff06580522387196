package org.adumbrate.proof.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;
import org.adumbrate.cli.DemoCopy;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;
import org.openqa.selenium.Keys;

/**
 * Times the proof page in the system's browser on a copy of the demo, by the page's own measures: from the input event to the painted picture.
 *
 * <pre>
 *   PageLatencyRun [EDITS]
 * </pre>
 *
 * Prints median and 95th percentile in ms of exact and of coarse pictures. The first line is what showing an empty frame takes: what follows
 * cannot be less.
 */
public final class PageLatencyRun {
    private final OpenPage page;
    private final int edits;

    private PageLatencyRun(OpenPage page, int edits) {
        this.page = page;
        this.edits = edits;
    }

    /** Runs it. */
    public static void main(String[] args) throws Exception {
        Path folder = Files.createTempDirectory("page-latency");
        Path sheet = DemoCopy.kilnYard(folder).resolve("kiln-yard.sheet.yaml");
        long begin = System.nanoTime();
        try (OpenPage page = OpenPage.on(sheet)) {
            System.out.printf(
                    Locale.ROOT,
                    "first picture %.1f s after the start of server and browser%n",
                    (System.nanoTime() - begin) / 1e9);
            page.size(1600, 1000, 1);
            new PageLatencyRun(page, args.length > 0 ? Integer.parseInt(args[0]) : 50).run(sheet);
        }
        System.exit(0);
    }

    private void run(Path sheet) throws IOException, InterruptedException {
        quiet();
        frames();
        stepped("opacity", "passes.shadow.opacity");
        stepped("a pen's width", "pens.furniture.width");
        stepped("a person moved", "figures[0].foot[0]");
        stepped("a person turned", "figures[1].turn");
        stepped("a region's corner", "regions.bed.points[0][0][0]");
        stepped("a veil's opacity", "veils.trees.opacity");
        stepped("sun", "sun.azimuth");
        panned();
        zoomed();
        exports(sheet);
        page.complaints().forEach(System.out::println);
    }

    /** What a frame takes with nothing to draw. */
    private void frames() {
        List<Double> times = new ArrayList<>();
        for (int k = 0; k < edits; k++) {
            times.add(((Number) page.driver().executeAsyncScript("""
                            const done = arguments[0], began = performance.now();
                            requestAnimationFrame(() => {
                              const { port1, port2 } = new MessageChannel();
                              port1.onmessage = () => done(performance.now() - began);
                              port2.postMessage(0);
                            });""")).doubleValue());
        }
        tell("an empty frame", times, List.of());
    }

    private void quiet() throws InterruptedException {
        page.await(() -> page.is("document.getElementById('coarse').hidden"));
        Thread.sleep(700);
    }

    private void stepped(String name, String key) throws InterruptedException {
        if (!page.has("#text [data-key=\"" + key + "\"]")) {
            System.out.println(name + ": no control for " + key);
            return;
        }
        measured(name, k -> {
            page.focus(key);
            page.press(k % 2 == 0 ? Keys.ARROW_UP : Keys.ARROW_DOWN);
        });
    }

    private void measured(String name, IntConsumer edit) throws InterruptedException {
        for (int k = 0; k < 6; k++) {
            edit.accept(k);
            quiet();
        }
        page.run("performance.clearMeasures()");
        for (int k = 0; k < edits; k++) {
            edit.accept(k);
            quiet();
        }
        tell(name, times("edit", true), times("edit", false));
    }

    private List<Double> times(String name, boolean exact) {
        List<Double> times = new ArrayList<>();
        List<?> found = (List<?>) page.run(
                "return performance.getEntriesByName(arguments[0]).filter((one) => one.detail.exact === arguments[1]).map((one) => one.duration)",
                name,
                exact);
        found.forEach(time -> times.add(((Number) time).doubleValue()));
        return times;
    }

    /** Moves over the sheet, seen from near, to places that were not seen before. */
    private void panned() throws InterruptedException {
        for (int k = 0; k < 5; k++) {
            seen("+");
        }
        page.run("performance.clearMeasures()");
        for (int k = 0; k < edits; k++) {
            boolean isDown = k % 8 == 7;
            boolean isRight = k / 8 % 2 == 0;
            seen(isDown ? Keys.ARROW_DOWN : isRight ? Keys.ARROW_RIGHT : Keys.ARROW_LEFT);
        }
        tell("pan", times("view", true), times("view", false));
        page.press("0");
        quiet();
    }

    /** Zooms in and out about other places each time. */
    private void zoomed() throws InterruptedException {
        List<Double> exact = new ArrayList<>();
        List<Double> coarse = new ArrayList<>();
        for (int k = 0; k < edits; k++) {
            page.run("performance.clearMeasures()");
            seen(k % 2 == 0 ? "+" : "-");
            exact.addAll(times("view", true));
            coarse.addAll(times("view", false));
            seen(k % 4 < 2 ? Keys.ARROW_RIGHT : Keys.ARROW_DOWN);
        }
        tell("zoom", exact, coarse);
    }

    /** Views are no edits: a measure from the key to what is seen at once, and one to the exact picture. */
    private void seen(CharSequence key) throws InterruptedException {
        page.run("document.querySelector('#pane').focus()");
        page.press(key);
        quiet();
    }

    /** From the export's last byte to the picture, by the clock of this program. */
    private void exports(Path sheet) throws IOException, InterruptedException {
        Path lines = sheet.resolveSibling("lines.pdf");
        byte[] first = Files.readAllBytes(lines);
        List<Double> times = new ArrayList<>();
        for (int k = 0; k < Math.max(3, edits / 10); k++) {
            String version = String.valueOf(page.run("return document.documentElement.dataset.version"));
            try (PDDocument document = Loader.loadPDF(first)) {
                try (PDPageContentStream shift = new PDPageContentStream(
                        document, document.getPage(0), PDPageContentStream.AppendMode.PREPEND, false)) {
                    shift.transform(Matrix.getTranslateInstance(0.001f * (k + 1), 0));
                }
                document.save(lines.toFile());
            }
            long begin = System.nanoTime();
            page.await(
                    () -> !version.equals(String.valueOf(page.run("return document.documentElement.dataset.version"))));
            page.await(() -> page.is("document.getElementById('coarse').hidden"));
            times.add((System.nanoTime() - begin) / 1e6);
            quiet();
        }
        Files.write(lines, first);
        tell("a new export", times, List.of());
    }

    private static void tell(String name, List<Double> exact, List<Double> coarse) {
        System.out.printf(
                Locale.ROOT,
                "%-18s exact: n %3d median %7.1f p95 %7.1f    coarse: n %3d median %7.1f p95 %7.1f%n",
                name,
                exact.size(),
                share(exact, 0.5),
                share(exact, 0.95),
                coarse.size(),
                share(coarse, 0.5),
                share(coarse, 0.95));
    }

    private static double share(List<Double> times, double share) {
        if (times.isEmpty()) {
            return Double.NaN;
        }
        List<Double> sorted = times.stream().sorted().toList();
        return sorted.get((int) Math.min(sorted.size() - 1, share * sorted.size()));
    }
}
