package org.adumbrate.cli;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import org.adumbrate.build.BuildResult;
import org.adumbrate.build.Reuse;
import org.adumbrate.build.Watch;
import org.adumbrate.fault.Refusal;

/** Builds, and builds again whenever an input has changed, until the program is ended. */
final class WatchLoop {
    /** One build. */
    interface Build {
        /** Runs it with what was kept from those before. */
        BuildResult run(Reuse reuse) throws IOException, Refusal;
    }

    private final CommonOptions common;
    private final Watch inputs;
    private final Build build;
    private final Reuse reuse = Reuse.inMemory();

    WatchLoop(CommonOptions common, Watch inputs, Build build) {
        this.common = common;
        this.inputs = inputs;
        this.build = build;
    }

    /** Goes on until the thread is interrupted. */
    void run() {
        try {
            while (true) {
                inputs.look();
                once();
                inputs.await();
            }
        } catch (InterruptedIOException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private void once() throws InterruptedIOException {
        long begin = System.nanoTime();
        try {
            BuildResult result = build.run(reuse);
            common.tell(result);
            common.writeJson(Results.of(result));
            common.say(told((System.nanoTime() - begin) / 1e9, reuse.account()));
        } catch (InterruptedIOException ended) {
            throw ended;
        } catch (UncheckedIOException fault) {
            common.complain(fault.getCause().getMessage());
        } catch (IOException | Refusal fault) {
            common.complain(fault.getMessage());
        } catch (RuntimeException defect) {
            // an input that is half written may show a defect; the whole one deserves another look
            common.complain("adumbrate: a defect in the program: " + defect);
        }
    }

    static String told(double seconds, Map<String, Reuse.Count> account) {
        return String.format(
                Locale.ROOT,
                "built in %.1f s; reused: %s; made anew: %s; watching",
                seconds,
                listed(account, Reuse.Count::reused),
                listed(account, Reuse.Count::made));
    }

    private static String listed(Map<String, Reuse.Count> account, ToIntFunction<Reuse.Count> number) {
        String list = account.entrySet().stream()
                .filter(stage -> number.applyAsInt(stage.getValue()) > 0)
                .map(stage -> stage.getKey() + (total(stage.getValue()) == 1 ? "" : share(stage.getValue(), number)))
                .collect(Collectors.joining(", "));
        return list.isEmpty() ? "nothing" : list;
    }

    private static int total(Reuse.Count count) {
        return count.reused() + count.made();
    }

    private static String share(Reuse.Count count, ToIntFunction<Reuse.Count> number) {
        int these = number.applyAsInt(count);
        return these == total(count) ? " (all " + these + ")" : " (" + these + " of " + total(count) + ")";
    }
}
