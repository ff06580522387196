package org.adumbrate.cli;

import java.awt.Desktop;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Opens an address in the person's browser, if there is a desktop. */
final class Browser {
    private Browser() {}

    /** False where none could be opened. */
    static boolean open(String address) {
        return byDesktop(address) || byCommand(address);
    }

    private static boolean byDesktop(String address) {
        try {
            if (GraphicsEnvironment.isHeadless()
                    || !Desktop.isDesktopSupported()
                    || !Desktop.getDesktop().isSupported(Desktop.Action.BROWSE)) {
                return false;
            }
            Desktop.getDesktop().browse(URI.create(address));
            return true;
        } catch (IOException | RuntimeException | LinkageError e) {
            return false;
        }
    }

    private static boolean byCommand(String address) {
        Optional<List<String>> command = command(
                System.getProperty("os.name", ""),
                address,
                System.getenv("DISPLAY") != null || System.getenv("WAYLAND_DISPLAY") != null);
        if (command.isEmpty()) {
            return false;
        }
        try {
            new ProcessBuilder(command.get())
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return true;
        } catch (IOException none) {
            return false;
        }
    }

    /**
     * What opens an address on a system.
     *
     * @param system as Java calls it
     * @param hasDisplay whether there is a screen, where that is said in the environment
     */
    static Optional<List<String>> command(String system, String address, boolean hasDisplay) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("mac")) {
            return Optional.of(List.of("open", address));
        }
        if (name.startsWith("windows")) {
            return Optional.of(List.of("rundll32", "url.dll,FileProtocolHandler", address));
        }
        return hasDisplay ? Optional.of(List.of("xdg-open", address)) : Optional.empty();
    }
}
