package org.adumbrate.drawing;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import org.adumbrate.fault.OutputFault;

/**
 * An output that is written beside its place and moved there when it is whole. Until then what stood there stays, and if
 * it never is whole nothing is left behind.
 */
final class AsideFile implements Closeable {
    private static final int MOST_NAMES = 1000;
    private static final int BUFFER = 1 << 16;

    private final Path target;
    private final Path aside;
    private final OutputStream out;

    private AsideFile(Path target, Path aside, OutputStream out) {
        this.target = target;
        this.aside = aside;
        this.out = new Translated(target, out);
    }

    /**
     * Begins an output; folders on the way to it are made.
     *
     * @throws OutputFault if nothing can be written there
     */
    static AsideFile beside(Path target) throws OutputFault {
        Path place = target.toAbsolutePath();
        try {
            if (Files.isDirectory(place)) {
                throw new OutputFault(target, "is a folder", "give the output another name", null);
            }
            if (Files.exists(place) && !Files.isWritable(place)) {
                throw new AccessDeniedException(place.toString(), null, "the file is write-protected");
            }
            Files.createDirectories(place.getParent());
            return open(target, place, 1);
        } catch (IOException e) {
            throw fault(target, e);
        }
    }

    /** Takes the first name that is free, so that two runs never write into one another. */
    private static AsideFile open(Path target, Path place, int attempt) throws IOException {
        Path aside = place.resolveSibling("." + place.getFileName() + "." + attempt + ".part");
        try {
            OutputStream out = Files.newOutputStream(aside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            return new AsideFile(target, aside, out);
        } catch (FileAlreadyExistsException e) {
            if (attempt == MOST_NAMES) {
                throw e;
            }
            return open(target, place, attempt + 1);
        }
    }

    /** Takes the output's bytes; whatever fails in it is an {@link OutputFault}. */
    OutputStream out() {
        return out;
    }

    /** Puts the output in its place. */
    void moveIntoPlace() throws OutputFault {
        try {
            out.close();
            try {
                Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(aside, target, StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException e) {
            throw fault(target, e);
        }
    }

    /** Removes what was written, unless it is in its place. */
    @Override
    public void close() throws OutputFault {
        try {
            try {
                out.close();
            } finally {
                Files.deleteIfExists(aside);
            }
        } catch (IOException e) {
            throw fault(target, e);
        }
    }

    private static OutputFault fault(Path target, IOException cause) {
        if (cause instanceof OutputFault fault) {
            return fault;
        }
        return new OutputFault(
                target,
                "cannot be written (" + reason(cause).replaceAll("\\s+", " ") + ")",
                "make room or choose another place; what stood there is unchanged",
                cause);
    }

    private static String reason(IOException cause) {
        if (cause instanceof FileAlreadyExistsException exists) {
            return exists.getFile() + " is not a folder";
        }
        if (cause instanceof FileSystemException trouble && trouble.getReason() != null) {
            return trouble.getReason();
        }
        return cause instanceof AccessDeniedException ? "access is denied" : String.valueOf(cause.getMessage());
    }

    /** Buffers, and turns failures into faults that name the output. */
    private static final class Translated extends OutputStream {
        private final Path target;
        private final OutputStream buffered;

        Translated(Path target, OutputStream file) {
            this.target = target;
            this.buffered = new BufferedOutputStream(file, BUFFER);
        }

        @Override
        public void write(int b) throws OutputFault {
            translated(() -> buffered.write(b));
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws OutputFault {
            translated(() -> buffered.write(bytes, from, length));
        }

        @Override
        public void flush() throws OutputFault {
            translated(buffered::flush);
        }

        @Override
        public void close() throws OutputFault {
            translated(buffered::close);
        }

        private void translated(Writing writing) throws OutputFault {
            try {
                writing.run();
            } catch (IOException e) {
                throw fault(target, e);
            }
        }
    }

    private interface Writing {
        void run() throws IOException;
    }
}
