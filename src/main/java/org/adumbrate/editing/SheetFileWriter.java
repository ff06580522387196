package org.adumbrate.editing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFileAttributes;
import java.util.Arrays;
import org.adumbrate.fault.OutputFault;
import org.adumbrate.output.OutputFile;

/** Writes a sheet file aside and moves it into place: the file that a link names, with the permissions that it had. */
final class SheetFileWriter {
    private SheetFileWriter() {}

    /**
     * Writes.
     *
     * @param file the sheet file, or a link to it, which stays one
     * @param before the text that must still stand there
     * @throws OutputFault if another text stands there, or the file cannot be written; it is then as it was
     */
    static void write(Path file, String before, String after) throws IOException {
        Path target = real(file);
        try (OutputFile output = OutputFile.begin(target)) {
            output.stream().write(after.getBytes(StandardCharsets.UTF_8));
            keepPermissions(target, output.aside());
            if (!Arrays.equals(Files.readAllBytes(target), before.getBytes(StandardCharsets.UTF_8))) {
                throw new OutputFault(
                        file, "was changed by somebody else meanwhile", "nothing was written; try again", null);
            }
            output.commit();
        } catch (OutputFault e) {
            throw e;
        } catch (IOException e) {
            throw OutputFile.fault(file, e);
        }
    }

    private static Path real(Path file) throws OutputFault {
        try {
            return file.toRealPath();
        } catch (IOException e) {
            throw OutputFile.fault(file, e);
        }
    }

    private static void keepPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(from, PosixFileAttributeView.class);
        if (view == null) {
            return;
        }
        PosixFileAttributes old = view.readAttributes();
        PosixFileAttributeView made = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        if (!made.readAttributes().group().equals(old.group())) {
            try {
                made.setGroup(old.group());
            } catch (IOException e) {
                // only members may give a file to a group; what the group may do is then left out of the permissions'
                // meaning
                System.getLogger(SheetFileWriter.class.getName())
                        .log(System.Logger.Level.DEBUG, "group not kept: " + from, e);
            }
        }
        made.setPermissions(old.permissions());
    }
}
