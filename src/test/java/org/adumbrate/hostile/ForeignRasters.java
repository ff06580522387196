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
 * Reads every raster of some folders as the program does, each as it is and with seeded changes, in a worker with a bounded
 * heap; pictures that were not changed are compared with what another reader makes of them, if there is one.
 * {@code src/test/scripts/foreign-files.sh} calls it.
 */
final class ForeignRasters {
    private static final Map<String, Format> BY_ENDING = Map.ofEntries(
            Map.entry(".png", Format.PNG),
            Map.entry(".apng", Format.PNG),
            Map.entry(".jpg", Format.JPEG),
            Map.entry(".jpeg", Format.JPEG),
            Map.entry(".jpe", Format.JPEG),
            Map.entry(".jfif", Format.JPEG),
            Map.entry(".tif", Format.TIFF),
            Map.entry(".tiff", Format.TIFF),
            Map.entry(".btf", Format.TIFF),
            Map.entry(".tf8", Format.TIFF),
            Map.entry(".bmp", Format.BMP),
            Map.entry(".dib", Format.BMP),
            Map.entry(".pnm", Format.PNM),
            Map.entry(".pbm", Format.PNM),
            Map.entry(".pgm", Format.PNM),
            Map.entry(".ppm", Format.PNM),
            Map.entry(".pam", Format.PNM),
            Map.entry(".hdr", Format.HDR),
            Map.entry(".pic", Format.HDR));

    /** Of files longer than this no changed copies are made; they would take the time of a hundred others. */
    private static final int LONGEST_MUTATED = 2_000_000;

    private final ForeignOptions options;
    private final ForeignReader reader;
    private final ForeignTable table;
    private final ComparedPictures compared;

    private ForeignRasters(
            ForeignOptions options, ForeignReader reader, ForeignTable table, ComparedPictures compared) {
        this.options = options;
        this.reader = reader;
        this.table = table;
        this.compared = compared;
    }

    /** Writes the tables, prints what they add up to, and ends with 1 if any file ended badly; differences are for eyes. */
    public static void main(String[] arguments) throws IOException {
        ForeignOptions options = ForeignOptions.parse("rasters.tsv", arguments);
        Files.createDirectories(options.table().getParent());
        Path differences =
                options.table().resolveSibling("compared-" + options.table().getFileName());
        try (ForeignReader reader = new ForeignReader();
                ForeignTable table = new ForeignTable(options.table());
                ComparedPictures compared = new ComparedPictures(differences)) {
            new ForeignRasters(options, reader, table, compared).run();
            System.out.print(table.summary());
            System.out.print(compared.summary());
            System.out.println(options.table());
            System.out.println(differences);
            System.exit(table.isGood() ? 0 : 1);
        }
    }

    private void run() throws IOException {
        for (Path folder : options.folders()) {
            for (Path file : files(folder)) {
                Optional<Format> format = format(file);
                if (format.isPresent()) {
                    ForeignResult result = reader.read(format.get(), file.toAbsolutePath());
                    table.add(file, format.get(), 0, result);
                    compared.add(file, result.outcome());
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
