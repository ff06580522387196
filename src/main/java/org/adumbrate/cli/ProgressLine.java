package org.adumbrate.cli;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.function.LongSupplier;
import org.adumbrate.prepare.memory.StageClock;

/**
 * Shows on one line of a terminal what is being done, how far it is, and, of work that lasts, how long it will still take. The
 * line is cleared with blanks: it needs neither colours nor other commands of the terminal.
 */
final class ProgressLine implements StageClock.Listener {
    private static final long INTERVAL_NS = 100_000_000;

    /** Earlier than this an estimate jumps about, and most work is done. */
    private static final double ESTIMATE_AFTER_S = 3;

    private final PrintWriter terminal;
    private final LongSupplier clock;
    private String stage = "";
    private long begun;
    private long shown;
    private int length;

    ProgressLine(PrintWriter terminal) {
        this(terminal, System::nanoTime);
    }

    /** @param clock counts nanoseconds */
    ProgressLine(PrintWriter terminal, LongSupplier clock) {
        this.terminal = terminal;
        this.clock = clock;
    }

    @Override
    public synchronized void at(String name, double share) {
        long now = clock.getAsLong();
        boolean begins = !name.equals(stage);
        if (begins) {
            stage = name;
            begun = now;
        }
        if (share >= 1) {
            show("");
        } else if (begins || now - shown > INTERVAL_NS) {
            show(share > 0 ? name + progress(share, (now - begun) / 1e9) : name);
            shown = now;
        }
    }

    private void show(String text) {
        terminal.print("\r" + text + " ".repeat(Math.max(0, length - text.length())) + (text.isEmpty() ? "\r" : ""));
        length = text.length();
        terminal.flush();
    }

    private static String progress(double share, double seconds) {
        String percent = String.format(Locale.ROOT, " %3.0f %%", 100 * share);
        return seconds < ESTIMATE_AFTER_S ? percent : percent + ", " + told(seconds / share - seconds) + " left";
    }

    private static String told(double seconds) {
        long whole = Math.round(seconds);
        return whole < 60 ? whole + " s" : String.format(Locale.ROOT, "%d min %02d s", whole / 60, whole % 60);
    }
}
