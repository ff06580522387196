package org.adumbrate.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.List;
import org.adumbrate.sheetfile.schema.SheetKeys;

/** What the program explains beside its commands, in texts of at most 80 columns; the first line of each is its title. */
final class HelpTopics implements Iterable<String> {
    /** In the order in which a sheet comes about. */
    static final List<String> NAMES = List.of(
            "files",
            "sheet-file",
            "editing",
            "proof",
            "passes",
            "pens",
            "cut",
            "veils",
            "faces",
            "people",
            "sun",
            "print",
            "troubleshooting",
            "licences");

    /** The line at which the list of all keys of the sheet file stands. */
    private static final String KEYS = "@KEYS@\n";

    /** The names, for shells that complete them. */
    @Override
    public Iterator<String> iterator() {
        return NAMES.iterator();
    }

    /** What a topic is about. */
    static String title(String name) {
        return read(name).lines().findFirst().orElseThrow();
    }

    /** The text of a topic. */
    static String text(String name) {
        String text = read(name);
        return text.contains(KEYS) ? text.replace(KEYS, SheetKeys.text()) : text;
    }

    private static String read(String name) {
        try (InputStream in = HelpTopics.class.getResourceAsStream("help/" + name + ".txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
