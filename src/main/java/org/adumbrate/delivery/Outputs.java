package org.adumbrate.delivery;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.fault.Refusal;

/** Guards inputs against being written over. */
final class Outputs {
    private Outputs() {}

    /** @throws Refusal if an output is the same file as an input, under whatever name */
    static void refuseInputs(List<Path> outputs, List<Path> inputs) throws Refusal, IOException {
        for (Path output : outputs) {
            for (Path input : inputs) {
                if (isSame(output, input)) {
                    throw new Refusal(
                            output + ": is one of the inputs and would be written over; give the output another name");
                }
            }
        }
    }

    private static boolean isSame(Path a, Path b) throws IOException {
        boolean both = Files.exists(a) && Files.exists(b);
        return both
                ? Files.isSameFile(a, b)
                : a.toAbsolutePath().normalize().equals(b.toAbsolutePath().normalize());
    }
}
