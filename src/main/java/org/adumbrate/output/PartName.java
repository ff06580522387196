package org.adumbrate.output;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.UserPrincipalNotFoundException;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The names of unfinished files: {@code .TARGET.MACHINE.PROCESS-UUID.part}. They tell the process that writes them and
 * where its number means something, so that what a killed run left can be told from what still grows.
 */
final class PartName {
    /** A part of a process that cannot be seen from here counts as left if nobody wrote to it for so long. */
    private static final Duration QUIET = Duration.ofMinutes(10);

    private static final Pattern REST =
            Pattern.compile("(?:(?<space>[0-9a-f]{8})\\.)?(?<pid>\\d{1,18})-[-0-9a-f]{36}\\.part$");

    private PartName() {}

    /** A new name beside a target. */
    static Path beside(Path target) {
        String space = ProcessSpace.here().map(here -> here + ".").orElse("");
        return target.resolveSibling(
                prefix(target) + space + ProcessHandle.current().pid() + "-" + UUID.randomUUID() + ".part");
    }

    /** Removes what dead runs left of a target. What cannot be removed stays, as it harms nobody. */
    static void sweep(Path target) {
        sweep(target.getParent(), prefix(target));
    }

    /** Removes what dead runs left of any target in a folder. */
    static void sweepAll(Path folder) {
        sweep(folder, ".");
    }

    private static void sweep(Path folder, String prefix) {
        try (DirectoryStream<Path> parts = Files.newDirectoryStream(
                folder, path -> path.getFileName().toString().startsWith(prefix))) {
            for (Path part : parts) {
                String rest = part.getFileName().toString().substring(prefix.length());
                Matcher name = REST.matcher(rest);
                if ((prefix.equals(".") ? name.find() : name.matches()) && isLeft(part, name)) {
                    Files.deleteIfExists(part);
                }
            }
        } catch (IOException | DirectoryIteratorException e) {
            System.getLogger(PartName.class.getName())
                    .log(System.Logger.Level.DEBUG, "unfinished files of earlier runs stay in " + folder, e);
        }
    }

    /**
     * Whether nobody writes to a part any more: at once if its process was one of this machine and does not live; a part of
     * another machine that shares the folder, or of a person whose processes may be hidden, when it has been quiet.
     */
    private static boolean isLeft(Path part, Matcher name) throws IOException {
        boolean quiet = Files.getLastModifiedTime(part)
                .toInstant()
                .isBefore(Instant.now().minus(QUIET));
        String space = name.group("space");
        if (space != null && !Optional.of(space).equals(ProcessSpace.here())) {
            return quiet;
        }
        boolean dead = !lives(Long.parseLong(name.group("pid")));
        return dead && (quiet || (space != null && isOurs(part)));
    }

    /** Where the system hides the processes of others, theirs seem dead while they live: proc(5), hidepid. */
    private static boolean isOurs(Path part) throws IOException {
        try {
            return Files.getOwner(part)
                    .equals(part.getFileSystem()
                            .getUserPrincipalLookupService()
                            .lookupPrincipalByName(System.getProperty("user.name")));
        } catch (UserPrincipalNotFoundException | UnsupportedOperationException unknown) {
            return false;
        }
    }

    private static boolean lives(long pid) {
        return ProcessHandle.of(pid).filter(ProcessHandle::isAlive).isPresent();
    }

    private static String prefix(Path target) {
        return "." + target.getFileName() + ".";
    }
}
