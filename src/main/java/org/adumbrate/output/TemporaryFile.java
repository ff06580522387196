package org.adumbrate.output;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import java.util.UUID;
import org.adumbrate.fault.OutputFault;

/**
 * A file for what does not fit in memory. It is deleted when it is closed, and nothing of it is left by a process that is
 * killed: on POSIX systems its name is gone as soon as it is open, others delete it together with the process's handles.
 */
public final class TemporaryFile {
    private TemporaryFile() {}

    /**
     * Opens a file in the system's temporary folder to read and write.
     *
     * @throws OutputFault if it cannot be made there
     */
    public static FileChannel open() throws OutputFault {
        return open(folder());
    }

    static FileChannel open(Path folder) throws OutputFault {
        boolean posix = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
        // nobody else may read what is drawn, as with Files.createTempFile
        FileAttribute<?>[] owners = posix
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                }
                : new FileAttribute<?>[0];
        try {
            return FileChannel.open(
                    folder.resolve("adumbrate-" + UUID.randomUUID() + ".rows"),
                    Set.of(
                            StandardOpenOption.CREATE_NEW,
                            StandardOpenOption.READ,
                            StandardOpenOption.WRITE,
                            StandardOpenOption.DELETE_ON_CLOSE),
                    owners);
        } catch (IOException e) {
            throw fault(folder, e);
        }
    }

    /** A failure to write or read such a file, put in the words of the desk. */
    public static OutputFault fault(IOException cause) {
        return fault(folder(), cause);
    }

    private static OutputFault fault(Path folder, IOException cause) {
        String reason = Files.isDirectory(folder) ? OutputFile.reason(cause) : "there is no such folder";
        return new OutputFault(
                folder,
                "the temporary folder does not take what is too large for memory (" + reason + ")",
                "make room there, or name another with ADUMBRATE_JAVA_OPTS=-Djava.io.tmpdir=FOLDER",
                cause);
    }

    private static Path folder() {
        return Path.of(System.getProperty("java.io.tmpdir"));
    }
}
