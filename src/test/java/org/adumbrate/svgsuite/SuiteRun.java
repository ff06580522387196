package org.adumbrate.svgsuite;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.adumbrate.fault.InputFault;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.read.LineSheets;

/** Compares the strokes that are read of a suite of SVG files with what two renderers draw; see {@code svg-suite.sh}. */
final class SuiteRun {
    /** Pixels, of which there are four in a user unit squared, that no smoothing of edges explains. */
    private static final int STRAY = 24;

    /** Of the pixels of ink. */
    private static final double OTHER_COLOR = 0.25;

    private final Path work;
    private final PrintStream table;
    private final Map<String, Integer> classes = new TreeMap<>();

    private SuiteRun(Path work, PrintStream table) {
        this.work = work;
        this.table = table;
    }

    /** One file in one variant, with and without strokes. */
    private record Sample(String name, Path full, Path bare) {}

    /** What a renderer's pictures say of a reading. */
    private record Verdict(boolean ink, boolean agrees, String how) {}

    public static void main(String[] arguments) throws IOException, InterruptedException {
        Path suite = Path.of(arguments[0]);
        Path work = Files.createDirectories(Path.of(arguments[1]));
        try (PrintStream table = new PrintStream(work.resolve("files.tsv").toFile(), StandardCharsets.UTF_8)) {
            SuiteRun run = new SuiteRun(work, table);
            for (SuiteVariant variant : SuiteVariant.values()) {
                if (arguments.length < 3 || variant.word().equals(arguments[2])) {
                    run.compare(suite, variant);
                }
            }
        }
    }

    private void compare(Path suite, SuiteVariant variant) throws IOException, InterruptedException {
        List<Sample> samples = samples(suite, variant);
        SuiteRenderers.chromium(
                samples.stream().flatMap(s -> Stream.of(s.full, s.bare)).toList());
        classes.clear();
        for (Sample sample : samples) {
            compare(sample, variant);
        }
        System.out.println(variant.word() + ", " + samples.size() + " files");
        classes.forEach((name, count) -> System.out.println("  " + name + ": " + count));
    }

    private List<Sample> samples(Path suite, SuiteVariant variant) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(suite)) {
            files = all.filter(file -> file.toString().endsWith(".svg"))
                    .sorted()
                    .toList();
        }
        List<Sample> samples = new ArrayList<>();
        for (Path file : files) {
            String name = suite.relativize(file).toString();
            Path folder = Files.createDirectories(work.resolve(variant.word()));
            String flat = name.replaceAll("[^-\\w.]", "_");
            String text = variant.of(Files.readString(file, StandardCharsets.ISO_8859_1));
            Path full = Files.writeString(folder.resolve(flat), text, StandardCharsets.ISO_8859_1);
            Path bare = Files.writeString(
                    folder.resolve(flat + ".bare.svg"), SuiteVariant.bare(text), StandardCharsets.ISO_8859_1);
            samples.add(new Sample(name, full, bare));
        }
        return samples;
    }

    private void compare(Sample sample, SuiteVariant variant) throws IOException, InterruptedException {
        Optional<LineSheet> sheet = Optional.empty();
        String words;
        try {
            sheet = Optional.of(LineSheets.read(sample.full));
            words = sheet.get().leftOut().stream().map(LeftOut::told).collect(Collectors.joining(", "));
        } catch (InputFault e) {
            words = e.getMessage().substring(e.getMessage().lastIndexOf(".svg: ") + 6);
        }
        List<Verdict> verdicts = new ArrayList<>();
        add(verdicts, SuiteRenderers.chromium(sample.bare), SuiteRenderers.chromium(sample.full), sheet);
        boolean byChromium = !verdicts.isEmpty();
        add(verdicts, SuiteRenderers.rsvg(sample.bare), SuiteRenderers.rsvg(sample.full), sheet);
        String kind = kind(verdicts, byChromium, sheet);
        classes.merge(kind, 1, Integer::sum);
        table.println(String.join(
                "\t",
                variant.word(),
                kind,
                sample.name,
                verdicts.stream().map(Verdict::how).collect(Collectors.joining(" / ")),
                words));
    }

    private static void add(
            List<Verdict> verdicts,
            Optional<BufferedImage> bare,
            Optional<BufferedImage> full,
            Optional<LineSheet> sheet) {
        if (bare.isPresent() && full.isPresent()) {
            verdicts.add(verdict(bare.get(), full.get(), sheet));
        }
    }

    private static String kind(List<Verdict> verdicts, boolean byChromium, Optional<LineSheet> sheet) {
        boolean ink = verdicts.stream().anyMatch(Verdict::ink);
        if (sheet.isEmpty()) {
            return ink ? "refused, with ink" : "refused, without ink";
        }
        long agreeing = verdicts.stream().filter(Verdict::agrees).count();
        if (agreeing == verdicts.size()) {
            return ink ? "agrees with both" : "agrees, empty";
        }
        if (agreeing > 0) {
            return "agrees with " + (byChromium && verdicts.get(0).agrees ? "Chromium" : "librsvg") + " alone";
        }
        return isTold(sheet.get()) ? "differs, told" : "differs silently";
    }

    private static boolean isTold(LineSheet sheet) {
        Set<LeftOut.Kind> plain = Set.of(
                LeftOut.Kind.AREA,
                LeftOut.Kind.WHITE_AREA,
                LeftOut.Kind.OUTLINED_AREA,
                LeftOut.Kind.OUTLINED_WHITE_AREA);
        return sheet.leftOut().stream().anyMatch(left -> !plain.contains(left.kind()));
    }

    private static Verdict verdict(BufferedImage bare, BufferedImage full, Optional<LineSheet> sheet) {
        Ink theirs = Ink.of(bare, full);
        boolean ink = theirs.pixels() > STRAY;
        if (sheet.isEmpty()) {
            return new Verdict(ink, !ink, "ink " + theirs.pixels());
        }
        Ink ours = Ink.of(bare, SuitePicture.over(bare, sheet.get()));
        int missing = theirs.without(ours);
        int more = ours.without(theirs);
        double color = theirs.otherColor(ours);
        boolean agrees = missing <= STRAY && more <= STRAY && color <= OTHER_COLOR;
        return new Verdict(
                ink,
                agrees,
                agrees
                        ? "agrees"
                        : "missing " + missing + " more " + more + " colour " + Math.round(100 * color) + "%");
    }
}
