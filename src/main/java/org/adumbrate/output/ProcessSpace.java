package org.adumbrate.output;

import java.io.IOException;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HexFormat;
import java.util.Optional;
import java.util.zip.CRC32;

/**
 * Within what the numbers of processes mean something: one machine since it was started, and on Linux one container. Names
 * of machines would not do, as several may be called the same.
 */
final class ProcessSpace {
    /** Random for each start of the machine: random(4). */
    private static final Path START = Path.of("/proc/sys/kernel/random/boot_id");

    /** What containers have of their own: pid_namespaces(7). */
    private static final Path NUMBERS = Path.of("/proc/self/ns/pid");

    private static final Optional<String> HERE = identity().map(ProcessSpace::digits);

    private ProcessSpace() {}

    /** Eight hexadecimal digits that stand for this one; empty if that cannot be known. */
    static Optional<String> here() {
        return HERE;
    }

    private static String digits(String identity) {
        CRC32 sum = new CRC32();
        sum.update(identity.getBytes(StandardCharsets.UTF_8));
        return HexFormat.of().toHexDigits((int) sum.getValue());
    }

    private static Optional<String> identity() {
        try {
            if (Files.exists(START)) {
                return Optional.of(Files.readString(START) + Files.readSymbolicLink(NUMBERS));
            }
            return addresses();
        } catch (IOException | UnsupportedOperationException unknown) {
            return Optional.empty();
        }
    }

    /** Of network cards, which no two machines share. */
    private static Optional<String> addresses() throws SocketException {
        StringBuilder addresses = new StringBuilder();
        for (NetworkInterface card : Collections.list(NetworkInterface.getNetworkInterfaces())) {
            byte[] address = card.isVirtual() ? null : card.getHardwareAddress();
            if (address != null) {
                addresses.append(HexFormat.of().formatHex(address)).append(' ');
            }
        }
        return addresses.isEmpty() ? Optional.empty() : Optional.of(addresses.toString());
    }
}
