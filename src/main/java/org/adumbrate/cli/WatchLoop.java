package org.adumbrate.cli;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.UncheckedIOException;
import org.adumbrate.delivery.BuildResult;
import org.adumbrate.delivery.Watch;
import org.adumbrate.fault.Refusal;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.memory.Superseded;

/** Builds, and builds again whenever an input has changed, until the program is ended. A change ends a build that is still running. */
final class WatchLoop {
    /** One build. */
    interface Build {
        /** Runs it. */
        BuildResult in(Run run) throws IOException, Refusal;
    }

    private final CommonOptions common;
    private final Watch inputs;
    private final Build build;
    private final Memory memory;

    WatchLoop(CommonOptions common, Watch inputs, Memory memory, Build build) {
        this.common = common;
        this.inputs = inputs;
        this.memory = memory;
        this.build = build;
    }

    /** Goes on until the thread is interrupted. */
    void run() throws IOException {
        try (memory;
                inputs) {
            while (true) {
                inputs.look();
                once();
            }
        } catch (InterruptedIOException ended) {
            Thread.currentThread().interrupt();
        }
    }

    /** Builds, and waits for the next change. */
    private void once() throws InterruptedIOException {
        Run run = memory.begin();
        Thread lookout = new Thread(() -> awaitChange(run), "waiting for a change");
        lookout.setDaemon(true);
        lookout.start();
        try {
            build(run);
            run.close();
            lookout.join();
        } catch (InterruptedException e) {
            throw new InterruptedIOException("stopped");
        } finally {
            lookout.interrupt();
        }
    }

    private void awaitChange(Run run) {
        try {
            inputs.await();
            run.supersede();
        } catch (InterruptedIOException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private void build(Run run) throws InterruptedIOException {
        long begin = System.nanoTime();
        try {
            BuildResult result = build.in(run);
            common.tell(result);
            common.writeJson(Results.of(result));
            common.say(Reused.told((System.nanoTime() - begin) / 1e9, result.stages()) + "; watching");
        } catch (Superseded changed) {
            // the next build shows it
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
