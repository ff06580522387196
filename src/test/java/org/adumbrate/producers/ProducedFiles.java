package org.adumbrate.producers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.ReadingNote;
import org.adumbrate.linework.read.LineSheets;
import org.adumbrate.linework.sort.ColorSort;
import org.adumbrate.linework.sort.ColorTally;

/**
 * Reads the files that {@code src/test/scripts/producers/make.py} made, as the program does, and compares the length in each colour with
 * what {@code expected.tsv} says. Prints a line for each file: its name, {@code same} or what differs, and what else was told of it.
 */
public final class ProducedFiles {
    private ProducedFiles() {}

    /** Reads all files of a folder; ends with 1 if any differs. */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args[0]);
        int files = 0;
        int differ = 0;
        for (String row : Files.readAllLines(folder.resolve("expected.tsv"))) {
            String[] fields = row.split("\t", -1);
            Optional<String> difference;
            String told = "";
            try {
                LineSheet sheet = LineSheets.read(folder.resolve(fields[0]));
                difference = difference(sheet, fields[3], Double.parseDouble(fields[1]));
                told = Stream.concat(
                                sheet.remarks().stream().map(ReadingNote::told),
                                sheet.leftOut().stream().map(LeftOut::told))
                        .collect(Collectors.joining("; "));
            } catch (IOException e) {
                difference = Optional.of(e.getMessage());
            }
            files++;
            differ += difference.isPresent() ? 1 : 0;
            System.out.println(fields[0] + "\t" + difference.orElse("same") + "\t" + told);
        }
        System.out.println(files + " files, " + differ + " differ");
        System.exit(differ == 0 ? 0 : 1);
    }

    /** What differs by more than so many mm in a metre, or 0.005 mm if that is more. */
    private static Optional<String> difference(LineSheet sheet, String expected, double perMetre) {
        Map<Srgb, Double> wanted = new LinkedHashMap<>();
        for (String entry : expected.split(",", -1)) {
            String[] both = entry.split("=", -1);
            wanted.merge(Srgb.parse(both[0]).orElseThrow(), Double.parseDouble(both[1]), Double::sum);
        }
        Map<Srgb, Srgb> names = new LinkedHashMap<>();
        wanted.keySet().forEach(color -> names.put(color, color));
        ColorSort<Srgb> sort = ColorSort.by(names);
        Map<Srgb, Double> found = new LinkedHashMap<>();
        for (ColorTally tally : ColorTally.of(sheet)) {
            found.merge(sort.of(tally.color()).orElse(tally.color()), tally.lengthMm(), Double::sum);
        }
        String wrong = Stream.concat(wanted.keySet().stream(), found.keySet().stream())
                .distinct()
                .filter(color -> {
                    double length = wanted.getOrDefault(color, 0.0);
                    return Math.abs(found.getOrDefault(color, 0.0) - length)
                            > Math.max(0.005, perMetre * length / 1000);
                })
                .map(color -> String.format(
                        Locale.ROOT,
                        "%s %.3f of %.3f mm",
                        color,
                        found.getOrDefault(color, 0.0),
                        wanted.getOrDefault(color, 0.0)))
                .collect(Collectors.joining(", "));
        return wrong.isEmpty() ? Optional.empty() : Optional.of(wrong);
    }
}
