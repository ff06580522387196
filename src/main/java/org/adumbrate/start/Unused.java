package org.adumbrate.start;

import java.nio.file.Path;
import org.adumbrate.fault.InputFault;

/**
 * A file that a sheet does without.
 *
 * @param file which
 * @param reason why; no sentence, without the file's name
 */
record Unused(Path file, String reason) {
    static Unused of(Path file, InputFault fault) {
        String message = fault.getMessage();
        String prefix = file + ": ";
        return new Unused(file, message.startsWith(prefix) ? message.substring(prefix.length()) : message);
    }
}
