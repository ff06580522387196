package org.adumbrate.delivery;

import java.io.Closeable;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/**
 * What the platform tells of changes in the folders of some files. It may tell nothing, as for drives of a network, and may tell of files that
 * nobody asked about: a notice is a reason to look, and no more.
 */
final class ChangeNotices implements Closeable {
    private final Optional<WatchService> service;
    private final Map<Path, WatchKey> folders = new HashMap<>();

    private ChangeNotices(Optional<WatchService> service) {
        this.service = service;
    }

    /** Notices as far as the platform gives any. */
    static ChangeNotices begin() {
        try {
            return new ChangeNotices(Optional.of(FileSystems.getDefault().newWatchService()));
        } catch (IOException | UnsupportedOperationException none) {
            return new ChangeNotices(Optional.empty());
        }
    }

    /** Asks for notices of the folders of some files, and of no others. */
    void follow(List<Path> files) {
        Set<Path> wanted = new HashSet<>();
        files.forEach(file -> addFolders(file.toAbsolutePath().normalize(), wanted));
        folders.entrySet().removeIf(known -> {
            boolean gone = !wanted.contains(known.getKey()) || !known.getValue().isValid();
            if (gone) {
                known.getValue().cancel();
            }
            return gone;
        });
        wanted.forEach(this::register);
    }

    /** The folder of a file, and that of the file which it links to. */
    private static void addFolders(Path file, Set<Path> folders) {
        if (file.getParent() != null) {
            folders.add(file.getParent());
        }
        if (Files.isSymbolicLink(file)) {
            try {
                folders.add(file.toRealPath().getParent());
            } catch (IOException dangling) {
                // what it links to is not there yet; its stamp tells when it is
            }
        }
    }

    private void register(Path folder) {
        if (service.isPresent() && !folders.containsKey(folder)) {
            try {
                folders.put(
                        folder,
                        folder.register(
                                service.get(),
                                StandardWatchEventKinds.ENTRY_CREATE,
                                StandardWatchEventKinds.ENTRY_DELETE,
                                StandardWatchEventKinds.ENTRY_MODIFY));
            } catch (IOException | UnsupportedOperationException untold) {
                // a folder that is not there, or a platform whose notices are used up: stamps are looked at anyway
            }
        }
    }

    /**
     * Waits for a notice.
     *
     * @param mostMs how long
     * @return true if there was one
     * @throws InterruptedIOException if the thread is interrupted
     */
    boolean await(long mostMs) throws InterruptedIOException {
        try {
            if (service.isEmpty()) {
                Thread.sleep(mostMs);
                return false;
            }
            WatchKey key = service.get().poll(mostMs, TimeUnit.MILLISECONDS);
            boolean any = key != null;
            while (key != null) {
                key.pollEvents();
                key.reset();
                key = service.get().poll();
            }
            return any;
        } catch (InterruptedException | ClosedWatchServiceException e) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("stopped");
        }
    }

    @Override
    public void close() throws IOException {
        if (service.isPresent()) {
            service.get().close();
        }
    }
}
