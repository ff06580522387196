package org.adumbrate.proof;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.System.Logger.Level;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import org.adumbrate.delivery.BuildResult;
import org.adumbrate.delivery.ClosingReport;
import org.adumbrate.delivery.SheetBuild;
import org.adumbrate.fault.Refusal;
import org.adumbrate.json.Json;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.memory.StageClock;
import org.adumbrate.prepare.memory.Superseded;
import org.adumbrate.proof.http.Events;

/**
 * Delivers the sheet, one delivery at a time, as {@code build} does; pages hear how far it is. It can be stopped: what is finished by
 * then stays, and the rest is as it was.
 */
final class DeliveryDesk {
    /** A bar moves smoothly enough so. */
    private static final long BETWEEN_NANOS = 50_000_000;

    /** A strip of the largest sheet takes less. */
    private static final long LONGEST_STOP_MS = 10_000;

    private final Path file;
    private final Memory memory;
    private final ClosingReport.Maker report;
    private final Events events;
    private final AtomicReference<Run> running = new AtomicReference<>();
    private volatile Thread delivering;

    /** @param report makes the report of a delivery */
    DeliveryDesk(Path file, Memory memory, ClosingReport.Maker report, Events events) {
        this.file = file;
        this.memory = memory;
        this.report = report;
        this.events = events;
    }

    /**
     * Begins to deliver; false if a delivery is going on.
     *
     * @param only the items by the sheet file's words; all if empty
     */
    boolean begin(Set<String> only) {
        Run run = memory.begin();
        if (!running.compareAndSet(null, run)) {
            run.close();
            return false;
        }
        Thread thread = new Thread(() -> deliver(only, run), "delivering");
        thread.setDaemon(true);
        delivering = thread;
        thread.start();
        return true;
    }

    /** Stops a delivery, if one is going on, at its next step. */
    void stop() {
        Run run = running.get();
        if (run != null) {
            run.supersede();
        }
    }

    /** Stops a delivery, and waits until what it leaves is whole. */
    void end() {
        stop();
        Thread thread = delivering;
        if (thread != null) {
            try {
                thread.join(LONGEST_STOP_MS);
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }
    }

    private void deliver(Set<String> only, Run run) {
        Map<String, Object> end;
        try (run) {
            BuildResult result =
                    SheetBuild.run(file, only, OptionalDouble.empty(), Optional.empty(), listener(run), run, report);
            end = done(result);
        } catch (Superseded stopped) {
            end = Json.object("stopped", true);
        } catch (UncheckedIOException wrapped) {
            end = wrapped.getCause() instanceof Superseded
                    ? Json.object("stopped", true)
                    : Json.object("failed", String.valueOf(wrapped.getCause().getMessage()));
        } catch (IOException | Refusal fault) {
            end = Json.object("failed", String.valueOf(fault.getMessage()));
        } catch (RuntimeException | Error defect) {
            System.getLogger(DeliveryDesk.class.getName()).log(Level.ERROR, "a defect in the program", defect);
            end = Json.object("failed", "a defect in the program: " + defect);
        }
        running.set(null);
        events.send("delivery", end);
    }

    /** Tells pages, and ends the work where it has been stopped. */
    private StageClock.Listener listener(Run run) {
        AtomicLong last = new AtomicLong(System.nanoTime() - BETWEEN_NANOS);
        return (stage, share) -> {
            try {
                run.step();
            } catch (Superseded stopped) {
                throw new UncheckedIOException(stopped);
            }
            long now = System.nanoTime();
            if (now - last.get() >= BETWEEN_NANOS) {
                last.set(now);
                events.send("delivery", Json.object("share", share, "stage", stage));
            }
        };
    }

    private static Map<String, Object> done(BuildResult result) {
        return Json.object(
                "done",
                result.outputs().stream()
                        .map(output -> Json.object(
                                "kind", output.kind(),
                                "file", output.file(),
                                "href", "/out/" + output.kind(),
                                "bytes", output.bytes()))
                        .toList(),
                "findings",
                result.findings().stream()
                        .map(finding -> Json.object(
                                "severity", finding.severity().name().toLowerCase(Locale.ROOT),
                                "text", finding.text()))
                        .toList());
    }
}
