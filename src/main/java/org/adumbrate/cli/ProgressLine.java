package org.adumbrate.cli;

import java.io.PrintWriter;
import java.util.Locale;
import org.adumbrate.build.Stages;

/** Shows on one line of a terminal what is being done, how far it is, and how long it will still take. */
final class ProgressLine implements Stages.Listener {
    private static final long INTERVAL_NS = 100_000_000;
    private static final double LONG_WORK_S = 2;

    private final PrintWriter terminal;
    private String stage = "";
    private long begun;
    private long shown;

    ProgressLine(PrintWriter terminal) {
        this.terminal = terminal;
    }

    @Override
    public synchronized void at(String name, double share) {
        long now = System.nanoTime();
        if (!name.equals(stage)) {
            stage = name;
            begun = now;
            shown = 0;
        }
        if (share >= 1) {
            terminal.print("\r\u001b[K");
        } else if (now - shown > INTERVAL_NS) {
            terminal.print("\r\u001b[K" + name + (share > 0 ? percent(share, (now - begun) / 1e9) : ""));
        } else {
            return;
        }
        shown = now;
        terminal.flush();
    }

    private static String percent(double share, double seconds) {
        String percent = String.format(Locale.ROOT, " %3.0f %%", 100 * share);
        double left = seconds / share - seconds;
        return seconds + left > LONG_WORK_S ? percent + String.format(Locale.ROOT, ", %.0f s left", left) : percent;
    }
}
