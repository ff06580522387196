package org.adumbrate.sheetfile;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.reading.SheetFile;
import org.adumbrate.sheetfile.reading.SheetFileReader;

/** A folder with the exports that the test sheets name; all of them empty, for the reader opens none. */
final class Desk {
    private static final List<String> EXPORTS = List.of(
            "lines.pdf",
            "lines-trees.pdf",
            "lines-people-height.pdf",
            "shadow.jpg",
            "occlusion.png",
            "depth.png",
            "materials.png",
            "figures/walking.svg",
            "figures/reed.SVG",
            "figures/shadows.png");

    private final Path folder;

    Desk(Path folder) throws IOException {
        this.folder = folder;
        Files.createDirectories(folder.resolve("figures"));
        Files.createDirectories(folder.resolve("taken.png"));
        for (String export : EXPORTS) {
            Files.createFile(folder.resolve(export));
        }
    }

    Path folder() {
        return folder;
    }

    Path sheetFile() {
        return folder.resolve("kiln.sheet.yaml");
    }

    SheetFile read(String text) throws SheetFileFault {
        return SheetFileReader.read(sheetFile(), text);
    }

    /** The complaints about a text, without the file's name; none where it reads well. */
    List<String> complaints(String text) {
        try {
            read(text);
            return List.of();
        } catch (SheetFileFault fault) {
            return fault.complaints().stream()
                    .map(complaint -> complaint.line() + ":" + complaint.column() + ": " + complaint.text())
                    .toList();
        }
    }

    /** A sheet file, with lines and something to deliver added at its end where it has none. */
    static String completed(String text) {
        String lines = text.matches("(?s).*(^|\n)lines:.*") ? "" : "lines: lines.pdf\n";
        String deliver = text.matches("(?s).*(^|\n)deliver:.*") ? "" : "deliver: { drawing: out/drawing.pdf }\n";
        return text + lines + deliver;
    }

    /** The sheet file that has every key. */
    static String fullSheet() throws IOException {
        return resource("kiln-yard.sheet.yaml");
    }

    static String resource(String name) throws IOException {
        try (InputStream stream = Desk.class.getResourceAsStream(name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
