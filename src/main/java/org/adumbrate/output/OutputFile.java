package org.adumbrate.output;

import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.adumbrate.fault.OutputFault;

/**
 * A file in the making. It grows under another name in the folder of its target and takes the target's name in one step
 * when it is {@linkplain #commit committed}; closed without that, it vanishes. What a killed run left of the same target is
 * removed by a later one.
 *
 * <p>A target that is a link is followed and kept: the file that it leads to is replaced, in that file's own folder.
 */
public final class OutputFile implements Closeable {
    private final Path target;
    private final Path place;
    private final Path aside;
    private final FileChannel channel;
    private final OutputStream stream;
    private boolean committed;

    private OutputFile(Path target, Path place, Path aside, FileChannel channel) {
        this.target = target;
        this.place = place;
        this.aside = aside;
        this.channel = channel;
        this.stream = new FaultingStream(target, Channels.newOutputStream(channel));
    }

    /**
     * Begins a file beside its target; folders that are missing on the way are made.
     *
     * @throws OutputFault if the target cannot be written
     */
    public static OutputFile begin(Path target) throws OutputFault {
        Optional<Obstacle> obstacle = Obstacle.of(target);
        if (obstacle.isPresent()) {
            throw obstacle.get().fault(target.toString());
        }
        try {
            Path place = RealPath.of(target);
            Files.createDirectories(place.getParent());
            PartName.sweep(place);
            Path aside = PartName.beside(place);
            FileChannel channel = FileChannel.open(
                    aside, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.CREATE_NEW);
            return new OutputFile(target, place, aside, channel);
        } catch (IOException e) {
            throw fault(target, e);
        }
    }

    /** The file that a link at a place leads to, which is what is written; none if no link stands there. */
    public static Optional<Path> behindLink(Path target) {
        try {
            return Files.isSymbolicLink(target) ? Optional.of(RealPath.of(target)) : Optional.empty();
        } catch (IOException circular) {
            return Optional.empty();
        }
    }

    /** Removes what killed runs left unfinished in a folder, whatever it was to be. */
    public static void sweep(Path folder) {
        PartName.sweepAll(folder);
    }

    /** Where it will stand, as it was named. */
    public Path target() {
        return target;
    }

    /** Where it stands while it grows: in the folder of the file that is replaced. */
    public Path aside() {
        return aside;
    }

    /** Writes it from its beginning to its end, buffered; whatever fails in it is an {@link OutputFault}. */
    public OutputStream stream() {
        return stream;
    }

    /** Writes and reads it while it grows, where it is not written in order. */
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
            stream.flush();
            long bytes = channel.size();
            channel.close();
            try {
                Files.move(aside, place, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(aside, place, StandardCopyOption.REPLACE_EXISTING);
            }
            committed = true;
            return bytes;
        } catch (IOException e) {
            throw fault(target, e);
        }
    }

    /** A failure to write, put in the words of the desk. */
    public static OutputFault fault(Path target, IOException cause) {
        if (cause instanceof OutputFault fault) {
            return fault;
        }
        return new OutputFault(
                target,
                "cannot be written (" + reason(cause) + ")",
                "make room or choose another place; what stood there is unchanged",
                cause);
    }

    /** Why, in one line. */
    static String reason(IOException cause) {
        if (cause instanceof FileAlreadyExistsException exists) {
            return exists.getFile() + " is not a folder";
        }
        String reason = cause instanceof FileSystemException trouble && trouble.getReason() != null
                ? trouble.getReason()
                : cause instanceof AccessDeniedException ? "access is denied" : String.valueOf(cause.getMessage());
        return reason.replaceAll("\\s+", " ");
    }

    /** Removes the unfinished file unless it was committed. */
    @Override
    public void close() throws OutputFault {
        try {
            channel.close();
            if (!committed) {
                Files.deleteIfExists(aside);
            }
        } catch (IOException e) {
            throw fault(target, e);
        }
    }
}
