package org.adumbrate.sheetfile.reading;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.output.FileClaims;
import org.adumbrate.sheetfile.Outline;
import org.adumbrate.sheetfile.form.Notes;

/**
 * What the values of a sheet file owe each other. Works on whatever could be read, so that these complaints come out
 * together with all the others.
 *
 * @param notes what the reading found
 */
record CrossChecks(Notes notes) {
    void run() {
        new NameChecks(notes).run();
        new LayerChecks(notes).run();
        colorsHaveOnePen();
        pensFadeByDepth();
        outputsReplaceNothing();
    }

    private void colorsHaveOnePen() {
        Map<Object, String> pens = new HashMap<>();
        notes.values("pens\\.[^.]+\\.color").forEach(color -> {
            String pen = color.getKey().split("\\.", -1)[1];
            String first = pens.putIfAbsent(color.getValue(), pen);
            if (first != null) {
                notes.complain(color.getKey(), "pen '%s' draws %s already".formatted(first, color.getValue()));
            }
        });
    }

    private void pensFadeByDepth() {
        if (!notes.has("passes.depth")) {
            notes.values("pens\\.[^.]+\\.fades")
                    .forEach(fades -> notes.complain(
                            fades.getKey(), "'fades' needs a depth render: passes: { depth: { file: ... } }"));
        }
    }

    private void outputsReplaceNothing() {
        FileClaims claims = new FileClaims();
        notes.values("(?!deliver\\.).*")
                .forEach(value -> file(value.getValue()).ifPresent(input -> claims.reads(input, value.getKey())));
        notes.values("deliver\\..*")
                .forEach(value -> file(value.getValue()).ifPresent(output -> claims.writes(output, value.getKey())));
        for (FileClaims.Clash clash : claims.clashes()) {
            String is = clash.within()
                    ? " would be the folder of '"
                    : clash.otherRead() ? " is also read as '" : " is also written as '";
            notes.complain(clash.as(), clash.file() + is + clash.otherAs() + "'; name another file");
        }
    }

    /** The file that a value names, if it names one. */
    private static Optional<Path> file(Object value) {
        return value instanceof Path path
                ? Optional.of(path)
                : value instanceof Outline.Drawn outline ? Optional.of(outline.file()) : Optional.empty();
    }
}
