package org.adumbrate.proof.page;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Brings a folder of exports to a delivered sheet from the proof page alone: it starts what {@code adumbrate proof FOLDER}
 * starts, and from then on points, drags and types in the browser as {@link PageDeeds} says. It never writes the sheet file
 * and calls no route.
 *
 * <p>Arguments: the folder of exports, a text file with one deed a line, and a folder that must not exist yet; the exports are
 * copied there, the sheet grows beside them, and screenshots of the way are put in {@code way/}.
 */
final class WholeSheetFromThePageRun {
    private WholeSheetFromThePageRun() {}

    public static void main(String[] args) throws IOException {
        if (args.length != 3) {
            System.err.println("usage: WholeSheetFromThePageRun EXPORTS DEEDS.txt NEW-FOLDER");
            System.exit(2);
        }
        Path out = Path.of(args[2]).toAbsolutePath();
        List<String> deeds = Files.readAllLines(Path.of(args[1]));
        copy(Path.of(args[0]), Files.createDirectories(out));
        Path way = Files.createDirectories(out.resolve("way"));
        Process proof = begin(out);
        try (BufferedReader said =
                new BufferedReader(new InputStreamReader(proof.getInputStream(), StandardCharsets.UTF_8))) {
            String address = said.readLine();
            if (address == null) {
                throw new IOException("adumbrate proof ended before it gave an address");
            }
            try (PageHand hand = PageHand.open(address)) {
                new PageDeeds(hand, way).all(deeds);
                System.out.println(hand.actions() + " actions; the page says: " + hand.facts());
                System.out.println(hand.results());
            }
        } finally {
            proof.destroy();
        }
    }

    private static Process begin(Path folder) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        "org.adumbrate.cli.Adumbrate",
                        "proof",
                        folder.toString(),
                        "--no-open")
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
    }

    private static void copy(Path exports, Path folder) throws IOException {
        try (Stream<Path> files = Files.list(exports)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
    }
}
