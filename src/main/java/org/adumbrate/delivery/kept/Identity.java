package org.adumbrate.delivery.kept;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What this program is, so that another one, and the same on another Java machine, takes nothing that it kept. */
final class Identity {
    private Identity() {}

    /** The length and time of every file that the program consists of, and the Java machine's version. */
    static List<Object> ofThisProgram() throws IOException {
        List<Object> identity =
                new ArrayList<>(List.of(Runtime.version().toString(), System.getProperty("os.arch", "")));
        Path program;
        try {
            program = Path.of(Identity.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
        } catch (URISyntaxException e) {
            throw new IOException("where the program stands is not known", e);
        }
        try (Stream<Path> files = Files.walk(program)) {
            for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
                identity.add(file.toString());
                identity.add(Files.size(file));
                identity.add(Files.getLastModifiedTime(file).toMillis());
            }
        }
        return identity;
    }
}
