package org.adumbrate.sheetfile.edit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.reading.SheetFileReader;
import org.adumbrate.sheetfile.yaml.YamlText;

/** The sheet files of the tree and some that are hard to edit, each in many spellings that say the same. */
final class SheetTexts {
    private static final Pattern NAMED_FILE = Pattern.compile("[\\w./-]+\\.(?:pdf|svg|SVG|png|jpg|tif)");

    private static final List<String> HARD = List.of(
            """
            # Anker und Verweise
            lines: &blätter
            - &grund grund.pdf   # the base
            - { file: mehr.svg, fit: crop, }
            pens: { wand: &stift { color: "#404040", ink: &tinte '#102030', role: building },
                    dach: { <<: *stift, color: "#505050" },   # merged
                    boden: {
                      color: "#606060",   # 😀 outside the plane
                      width: 0.02 in,
                      dash: [ 1.6, 0.8,
                              0.2 , 0.8 ],
                      ink: *tinte
                    } }
            regions:
              beet:
                - - [10, 20]
                  - [30 mm, 20]
                  - - 30
                    - 4 cm
              himmel: { points: [[0, 0], [100, 0], [100, 20]] }
            floors:
              "hof": 0 m
              'dach': { elevation: 10 ft }
            figures:

            - outline: walking   # compact
              # of the first
              foot:
                - 12.5
                - 34
              floor: hof
              behind: [beet, himmel]

            -   { outline: standing, foot: [212, 188], floor: dach, stature: 5.5 ft }
            - outline: "child"
              foot: [ 82.2, 213.7 ]
              floor: hof
              look: { opacity: 50 % }
            order: [wand, dach-lage-fill]
            veils:
              dach-lage: { region: himmel, opacity: 40 %, etch: {} }
            entourage: {}
            deliver:
              drawing: >-
                out/zeichnung.pdf
              preview: { "file": out/vorschau.png, width: 800 px }
              ? report
              : out/bericht.html
            """,
            """
            ---
            size: 'A3 landscape'
            lines: { file: grund.pdf, fit: fit }
            passes: { shadow: { file: schatten.png,
              tone: [[0, 20], [50, 60], [100, 100]], mask: { inside: [[0, 0], [9, 0], [9, 9]] } },
              depth: {file: tiefe.png, near: 4 m, far: 40 m} }
            sun: { place: [48.2, 16.37], at: 2026-06-21T15:00+02:00, sample: { foot: [1, 2], head: [1, 1], tip: [3, 2] } }
            cut: {color: black, hatch: {}}
            clean-up: false
            profile: { width: 1 pt, pens: wall }
            pens:
              wall: {color: '#111111', role: building, fades: 50}

              # the last
              roof:
                color: "#222222"
            deliver: {drawing: {file: out/a.pdf}, underlay: {file: out/u.tif, bits: 16, colors: auto}}
            ...
            """,
            "{lines: grund.pdf, deliver: {svg: a.svg}}",
            "lines: grund.pdf\ndeliver:\n  svg: a.svg\nfigures:\npens:   # none yet\nfloors: {}\norder: []\n");

    private SheetTexts() {}

    /** All texts, each as it stands and in the given number of other spellings; all but the last, which has empty values, read well. */
    static List<SheetText> all(Path folder, int spellings, Random random) throws IOException {
        List<SheetText> texts = new ArrayList<>();
        List<Path> files = new ArrayList<>();
        for (String top : List.of(
                "passes", "src/test/resources/org/adumbrate/golden", "src/test/resources/org/adumbrate/sheetfile")) {
            try (Stream<Path> found = Files.walk(Path.of(top))) {
                found.filter(file -> file.toString().endsWith(".sheet.yaml"))
                        .sorted()
                        .forEach(files::add);
            }
        }
        List<String> bases = new ArrayList<>(HARD);
        for (Path file : files) {
            bases.add(Files.readString(file));
        }
        Path file = folder.resolve("a.sheet.yaml");
        for (String base : bases) {
            Matcher named = NAMED_FILE.matcher(base);
            while (named.find()) {
                touch(folder.resolve(named.group()));
            }
        }
        for (String base : bases) {
            reading(new SheetText(file, base))
                    .filter(complaint -> !complaint.contains("is empty"))
                    .ifPresent(complaint -> {
                        throw new IllegalStateException(complaint + " in\n" + base);
                    });
            texts.add(new SheetText(file, base));
            for (int k = 0; k < spellings; k++) {
                SheetText other = new SheetText(file, respelt(base, random));
                if (reading(other).isEmpty()) {
                    texts.add(other);
                }
            }
        }
        return texts;
    }

    private static void touch(Path file) {
        try {
            if (!file.toString().contains("out/") && !Files.exists(file)) {
                Files.createDirectories(file.getParent());
                Files.createFile(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What is wrong with a text. */
    static Optional<String> reading(SheetText text) {
        try {
            SheetFileReader.read(text.file(), YamlText.unmarked(text.text()));
            return Optional.empty();
        } catch (SheetFileFault e) {
            return Optional.of(e.getMessage());
        }
    }

    private static String respelt(String base, Random random) {
        StringBuilder text = new StringBuilder();
        for (String line : base.lines().toList()) {
            String spelt = line;
            boolean isKey = line.matches("\\s*[\\w-]+: [^>|].*") && !line.contains("#");
            if (random.nextInt(4) == 0 && isKey) {
                spelt = spelt.replaceFirst(": ", random.nextBoolean() ? ":\t" : ":    ");
            }
            if (random.nextInt(4) == 0) {
                spelt = spelt.replace("{ ", "{").replace(" }", "}").replace(", ", " ,  ");
            }
            if (random.nextInt(3) == 0 && !line.contains(">-")) {
                spelt += random.nextBoolean() ? "  # Höhe 3 m: \"x\" [ { 😀 }, *a" : "\t# , ] }";
            }
            if (random.nextInt(5) == 0 && !line.startsWith("---") && text.length() > 4) {
                text.append(random.nextBoolean() ? "# ---- ü ----" : random.nextBoolean() ? "    # , }" : "");
                text.append('\n');
            }
            text.append(spelt).append(random.nextInt(8) == 0 && !line.contains(">-") ? " \n" : "\n");
        }
        String result = text.toString();
        if (random.nextInt(3) == 0) {
            result = result.stripTrailing();
        }
        result = switch (random.nextInt(4)) {
            case 0 -> result.replace("\n", "\r\n");
            case 1 -> result.replaceFirst("\n", "\r\n").replaceFirst("\n(.*)$", "\r\n$1");
            default -> result;
        };
        return random.nextInt(3) == 0 ? YamlText.MARK + result : result;
    }
}
