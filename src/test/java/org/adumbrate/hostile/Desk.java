package org.adumbrate.hostile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The exports that sheet files name, laid beside them; empty, since reading a sheet file opens none. */
final class Desk {
    private static final Pattern EXPORT = Pattern.compile("[\\w/-]+\\.(pdf|svg|jpg|png|tif)", Pattern.CASE_INSENSITIVE);

    private Desk() {}

    static void lay(Format format, Path folder) throws IOException {
        if (format != Format.SHEET) {
            return;
        }
        TreeSet<String> names = new TreeSet<>();
        for (byte[] seed : Seeds.of(format).files()) {
            String text = new String(seed, StandardCharsets.UTF_8);
            EXPORT.matcher(text).results().map(MatchResult::group).forEach(names::add);
        }
        for (String name : names) {
            if (!name.startsWith("out/")) {
                Path file = folder.resolve(name);
                Files.createDirectories(file.getParent());
                Files.createFile(file);
            }
        }
    }
}
