package org.adumbrate.start;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.adumbrate.fault.InputFault;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.read.LineSheets;
import org.adumbrate.raster.decode.RasterFiles;

/**
 * What a folder holds, told by the content of its files.
 *
 * @param sheets the line sheets, by name
 * @param rasters the rasters that can be opened, by name
 * @param unused files that look like exports and cannot be used, each with the reason
 */
record ExportFolder(List<LineSheet> sheets, List<Path> rasters, List<Unused> unused) {
    /** Enough to find the root element of an SVG behind its preamble. */
    private static final int HEAD = 4096;

    /** Bytes of a text: anything but control characters other than white space. */
    private static final int FIRST_PRINTABLE = 9;

    /** @throws InputFault if it is no folder */
    static ExportFolder read(Path folder) throws IOException {
        ExportFolder found = new ExportFolder(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        for (Path file : files(folder)) {
            found.look(file);
        }
        return found;
    }

    /**
     * The files that must not be written over: exports, whether or not they can be read, and sheet files.
     *
     * @throws InputFault if it is no folder
     */
    static List<Path> claimed(Path folder) throws IOException {
        List<Path> claimed = new ArrayList<>();
        for (Path file : files(folder)) {
            byte[] head = head(file);
            if (isSheet(head) || !isText(head) || file.toString().matches("(?i).*\\.ya?ml")) {
                claimed.add(file);
            }
        }
        return claimed;
    }

    private static List<Path> files(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            String what = Files.exists(folder) ? "is a file, not a folder" : "does not exist";
            throw new InputFault(folder, what, "name the folder that holds the model's exports");
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> !file.getFileName().toString().startsWith("."))
                    .sorted()
                    .toList();
        }
    }

    private void look(Path file) throws IOException {
        byte[] head = head(file);
        try {
            if (isSheet(head)) {
                sheets.add(LineSheets.read(file));
            } else if (!isText(head)) {
                RasterFiles.open(file).close();
                rasters.add(file);
            }
        } catch (InputFault fault) {
            unused.add(Unused.of(file, fault));
        }
    }

    private static byte[] head(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return in.readNBytes(HEAD);
        }
    }

    private static boolean isSheet(byte[] head) {
        String text = new String(head, StandardCharsets.ISO_8859_1);
        return text.contains("%PDF-") || text.contains("<svg");
    }

    /** Notes, sheet files and tables are no exports. */
    private static boolean isText(byte[] head) {
        for (byte one : head) {
            if (one >= 0 && one < FIRST_PRINTABLE) {
                return false;
            }
        }
        String text = new String(head, StandardCharsets.ISO_8859_1);
        return !text.startsWith("P2") && !text.startsWith("P3") && !text.startsWith("#?");
    }
}
