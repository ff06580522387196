package org.adumbrate.delivery.kept;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** The files of kept values in a folder, those used longest ago first. */
final class KeptFiles {
    /** How their names end. */
    static final String END = ".kept";

    /** Values are written in a moment: unfinished files that nobody wrote to for so long are what a killed run left. */
    private static final Duration UNFINISHED = Duration.ofMinutes(10);

    private record KeptFile(Path file, long bytes, Instant used) {}

    private final List<KeptFile> files;

    private KeptFiles(List<KeptFile> files) {
        this.files = files;
    }

    static KeptFiles in(Path folder) throws IOException {
        List<KeptFile> files = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> found = Files.list(folder)) {
                for (Path file : found.filter(KeptFiles::isOurs)
                        .filter(Files::isRegularFile)
                        .toList()) {
                    add(file, files);
                }
            }
        }
        files.sort(Comparator.comparing(KeptFile::used));
        return new KeptFiles(files);
    }

    private static void add(Path file, List<KeptFile> files) throws IOException {
        try {
            files.add(new KeptFile(
                    file, Files.size(file), Files.getLastModifiedTime(file).toInstant()));
        } catch (NoSuchFileException gone) {
            // another run gave it up meanwhile
        }
    }

    private static boolean isOurs(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(END) || isUnfinished(name);
    }

    private static boolean isUnfinished(String name) {
        return name.startsWith(".") && name.endsWith(".part");
    }

    /** Removes files until the rest have no more bytes than they may. */
    void trim(long mostBytes) throws IOException {
        long bytes = files.stream().mapToLong(KeptFile::bytes).sum();
        Instant dead = Instant.now().minus(UNFINISHED);
        for (KeptFile file : files) {
            boolean unfinished = isUnfinished(file.file().getFileName().toString());
            if (unfinished ? file.used().isBefore(dead) : bytes > mostBytes) {
                Files.deleteIfExists(file.file());
                bytes -= file.bytes();
            }
        }
    }
}
