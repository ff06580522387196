package org.adumbrate.output;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import org.adumbrate.fault.OutputFault;

/**
 * A file in the making. It grows under another name in the folder of its target and takes the target's name in one step
 * when it is {@linkplain #commit committed}; closed without that, it vanishes.
 */
public final class OutputFile implements Closeable {
    private final Path target;
    private final Path aside;
    private final FileChannel channel;
    private boolean committed;

    private OutputFile(Path target, Path aside, FileChannel channel) {
        this.target = target;
        this.aside = aside;
        this.channel = channel;
    }

    /**
     * Begins a file beside its target; folders that are missing on the way are made.
     *
     * @throws OutputFault if the target cannot be written
     */
    public static OutputFile begin(Path target) throws OutputFault {
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null || Files.isDirectory(target)) {
            throw new OutputFault(target, "is a folder", "name a file in it", null);
        }
        try {
            Files.createDirectories(folder);
            Path aside = folder.resolve("." + target.getFileName() + "." + UUID.randomUUID() + ".part");
            FileChannel channel = FileChannel.open(
                    aside, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);
            return new OutputFile(target, aside, channel);
        } catch (IOException e) {
            throw new OutputFault(
                    target,
                    "cannot be written in " + folder + " (" + reason(e) + ")",
                    "choose a folder that you may write to",
                    e);
        }
    }

    /** Where it will stand. */
    public Path target() {
        return target;
    }

    /** Where it stands while it grows. */
    public Path aside() {
        return aside;
    }

    /** Writes and reads it while it grows. */
    public FileChannel channel() {
        return channel;
    }

    /**
     * Puts the file in its place.
     *
     * @return its size in bytes
     * @throws OutputFault if it cannot be moved there
     */
    public long commit() throws OutputFault {
        try {
            long bytes = channel.size();
            channel.force(true);
            channel.close();
            try {
                Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(aside, target, StandardCopyOption.REPLACE_EXISTING);
            }
            committed = true;
            return bytes;
        } catch (IOException e) {
            throw fault(target, e);
        }
    }

    /** A failure to write, put in the words of the desk. */
    public static OutputFault fault(Path target, IOException e) {
        return new OutputFault(
                target,
                "could not be written (" + reason(e) + ")",
                "make room on the disk or choose another folder",
                e);
    }

    private static String reason(IOException e) {
        if (e instanceof java.nio.file.AccessDeniedException) {
            return "permission denied";
        }
        if (e instanceof java.nio.file.FileAlreadyExistsException) {
            return "a file stands where a folder is needed";
        }
        if (e instanceof java.nio.file.FileSystemException fault && fault.getReason() != null) {
            return fault.getReason();
        }
        return e.getMessage();
    }

    /** Removes the unfinished file unless it was committed. */
    @Override
    public void close() throws IOException {
        channel.close();
        if (!committed) {
            Files.deleteIfExists(aside);
        }
    }
}
