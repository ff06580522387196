package org.adumbrate.cli;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.UncheckedIOException;
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
    private final Reuse reuse;

    WatchLoop(CommonOptions common, Watch inputs, Reuse reuse, Build build) {
        this.common = common;
        this.inputs = inputs;
        this.reuse = reuse;
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
            common.say(Reused.told((System.nanoTime() - begin) / 1e9, result.stages()) + "; watching");
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
}
