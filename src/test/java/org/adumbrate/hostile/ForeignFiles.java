package org.adumbrate.hostile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;

/**
 * Reads every PDF, SVG and YAML file of some folders as the program does, each as it is and with seeded changes, in a worker
 * with a bounded heap. A file must be read, or refused in one line, within 10 s of processor time; anything else counts as
 * bad. {@code src/test/scripts/foreign-files.sh} calls it.
 */
final class ForeignFiles {
    private static final Map<String, Format> BY_ENDING = Map.of(
            ".pdf", Format.PDF, ".svg", Format.SVG, ".svgz", Format.SVG, ".yaml", Format.SHEET, ".yml", Format.SHEET);

    /** Of files longer than this no changed copies are made; they would take the time of a hundred others. */
    private static final int LONGEST_MUTATED = 2_000_000;

    private final ForeignOptions options;
    private final ForeignReader reader;
    private final ForeignTable table;

    private ForeignFiles(ForeignOptions options, ForeignReader reader, ForeignTable table) {
        this.options = options;
        this.reader = reader;
        this.table = table;
    }

    /** Writes the table, prints what it adds up to, and ends with 1 if any file ended badly. */
    public static void main(String[] arguments) throws IOException {
        ForeignOptions options = ForeignOptions.parse("files.tsv", arguments);
        Files.createDirectories(options.table().getParent());
        try (ForeignReader reader = new ForeignReader();
                ForeignTable table = new ForeignTable(options.table())) {
            new ForeignFiles(options, reader, table).run();
            System.out.print(table.summary());
            System.out.println(options.table());
            System.exit(table.isGood() ? 0 : 1);
        }
    }

    private void run() throws IOException {
        for (Path folder : options.folders()) {
            for (Path file : files(folder)) {
                Optional<Format> format = format(file);
                if (format.isPresent()) {
                    table.add(file, format.get(), 0, reader.read(format.get(), file.toAbsolutePath()));
                    readMutations(file, format.get());
                }
            }
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static Optional<Format> format(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        int dot = name.lastIndexOf('.');
        return dot < 0 ? Optional.empty() : Optional.ofNullable(BY_ENDING.get(name.substring(dot)));
    }

    private void readMutations(Path file, Format format) throws IOException {
        byte[] content = Files.size(file) <= LONGEST_MUTATED ? Files.readAllBytes(file) : new byte[0];
        for (int k = 1; k <= options.mutations() && content.length > 0; k++) {
            Random random =
                    new Random(31 * options.seed() + ContentHash.of(content).hashCode() + k * 1_000_003L);
            byte[] changed = Mutant.changed(content, content, format.syntax(), random);
            String name = ContentHash.of(changed) + format.suffix();
            Path copy = Files.write(options.table().resolveSibling(name), changed);
            ForeignResult result = reader.read(format, copy);
            table.add(file, format, k, result);
            if (result.outcome().isGood()) {
                Files.delete(copy);
            }
        }
    }
}
