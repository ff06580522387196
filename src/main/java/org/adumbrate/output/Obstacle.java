package org.adumbrate.output;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.adumbrate.fault.OutputFault;

/**
 * What keeps a file from being written, as far as it can be seen without writing.
 *
 * @param what in words that follow the file's name
 * @param remedy what to do about it
 * @param ofFolder true if it is in the way of all files in a folder
 */
record Obstacle(String what, String remedy, boolean ofFolder) {
    private static final String ELSEWHERE = "choose another place; nothing was written";

    /** What is in the way of a file. */
    static Optional<Obstacle> of(Path target) {
        Path place;
        try {
            place = RealPath.of(target);
        } catch (IOException e) {
            return Optional.of(new Obstacle("is a link that cannot be followed", "remove it, or " + ELSEWHERE, false));
        }
        if (place.getParent() == null || Files.isDirectory(place)) {
            return Optional.of(new Obstacle("is a folder", "name a file in it", false));
        }
        if (Files.exists(place) && !Files.isRegularFile(place)) {
            return Optional.of(new Obstacle(
                    "is no file but a device or a pipe",
                    "name a file; --json writes to standard output with a dash",
                    false));
        }
        if (Files.exists(place) && !Files.isWritable(place)) {
            return Optional.of(new Obstacle("cannot be written (the file is write-protected)", ELSEWHERE, false));
        }
        return brokenLink(target, place).or(() -> ofFolder(place));
    }

    /** Folders are not made where a link points at nothing: what it stands for may only be missing for the moment. */
    private static Optional<Obstacle> brokenLink(Path target, Path place) {
        if (Files.isSymbolicLink(target) && !Files.isDirectory(place.getParent())) {
            return Optional.of(new Obstacle(
                    "is a link to " + place + ", whose folder is not there",
                    "make or mount that folder, or remove the link",
                    false));
        }
        for (Path at = target.toAbsolutePath().getParent(); at != null; at = at.getParent()) {
            if (Files.isSymbolicLink(at) && !Files.exists(at)) {
                return Optional.of(new Obstacle(
                        "cannot be written (" + at + " is a link to a folder that is not there)",
                        "make or mount that folder, or remove the link",
                        true));
            }
        }
        return Optional.empty();
    }

    private static Optional<Obstacle> ofFolder(Path place) {
        Path nearest = place.getParent();
        while (nearest != null && !Files.exists(nearest, LinkOption.NOFOLLOW_LINKS)) {
            nearest = nearest.getParent();
        }
        if (nearest == null) {
            return Optional.empty();
        }
        if (!Files.isDirectory(nearest)) {
            return Optional.of(inFolder(nearest + " is not a folder"));
        }
        if (isReadOnly(nearest)) {
            return Optional.of(inFolder("the file system of " + nearest + " is read-only"));
        }
        return Files.isWritable(nearest) && Files.isExecutable(nearest)
                ? Optional.empty()
                : Optional.of(inFolder("there is no permission to write into " + nearest));
    }

    private static Obstacle inFolder(String reason) {
        return new Obstacle("cannot be written (" + reason + ")", ELSEWHERE, true);
    }

    private static boolean isReadOnly(Path folder) {
        try {
            return !Files.isWritable(folder) && Files.getFileStore(folder).isReadOnly();
        } catch (IOException unknown) {
            return false;
        }
    }

    /**
     * Looks at files that will be written.
     *
     * @throws OutputFault if something is in the way of any; one line for each obstacle, with all files that it stops
     */
    static void refuse(List<Path> targets) throws OutputFault {
        Map<Obstacle, List<Path>> ofFolders = new LinkedHashMap<>();
        List<OutputFault> faults = new ArrayList<>();
        for (Path target : targets) {
            Optional<Obstacle> found = of(target);
            if (found.filter(Obstacle::ofFolder).isPresent()) {
                ofFolders
                        .computeIfAbsent(found.get(), obstacle -> new ArrayList<>())
                        .add(target);
            } else {
                found.ifPresent(obstacle -> faults.add(obstacle.fault(target.toString())));
            }
        }
        ofFolders.forEach((obstacle, stopped) -> faults.add(
                obstacle.fault(stopped.stream().map(Path::toString).distinct().collect(Collectors.joining(", ")))));
        if (!faults.isEmpty()) {
            throw OutputFault.all(faults);
        }
    }

    /** As a fault of one file, or of several. */
    OutputFault fault(String files) {
        return new OutputFault(files, what, remedy);
    }
}
