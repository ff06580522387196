package org.adumbrate.output;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The names of unfinished files, which tell the process that writes them, so that what a killed run left can be told. */
final class PartName {
    /**
     * A part that was written to so lately may belong to a process that cannot be seen from here, on another machine that
     * shares the folder.
     */
    private static final Duration QUIET = Duration.ofMinutes(10);

    private static final Pattern REST = Pattern.compile("(\\d{1,18})-[-0-9a-f]{36}\\.part");

    private PartName() {}

    /** A new name beside a target. */
    static Path beside(Path target) {
        return target.resolveSibling(
                prefix(target) + ProcessHandle.current().pid() + "-" + UUID.randomUUID() + ".part");
    }

    /**
     * Removes what dead runs left of a target: parts whose process does not live and that nobody wrote to for ten minutes.
     * What cannot be removed stays, as it harms nobody.
     */
    static void sweep(Path target) {
        String prefix = prefix(target);
        Instant quietSince = Instant.now().minus(QUIET);
        try (DirectoryStream<Path> parts = Files.newDirectoryStream(
                target.getParent(), path -> path.getFileName().toString().startsWith(prefix))) {
            for (Path part : parts) {
                if (isDead(part.getFileName().toString().substring(prefix.length()))
                        && Files.getLastModifiedTime(part).toInstant().isBefore(quietSince)) {
                    Files.deleteIfExists(part);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            System.getLogger(PartName.class.getName())
                    .log(System.Logger.Level.DEBUG, "unfinished files of earlier runs stay beside " + target, e);
        }
    }

    private static boolean isDead(String rest) {
        Matcher name = REST.matcher(rest);
        return name.matches()
                && ProcessHandle.of(Long.parseLong(name.group(1)))
                        .filter(ProcessHandle::isAlive)
                        .isEmpty();
    }

    private static String prefix(Path target) {
        return "." + target.getFileName() + ".";
    }
}
