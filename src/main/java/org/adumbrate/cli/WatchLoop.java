package org.adumbrate.cli;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.UncheckedIOException;
import org.adumbrate.delivery.BuildResult;
import org.adumbrate.delivery.Watch;
import org.adumbrate.fault.Refusal;
import org.adumbrate.prepare.memory.Memory;

/** Builds, and builds again whenever an input has changed, until the program is ended. */
final class WatchLoop {
    /** One build. */
    interface Build {
        /** Runs it with what was kept from those before. */
        BuildResult run(Memory memory) throws IOException, Refusal;
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
    void run() {
        try {
            while (true) {
                inputs.look();
                once();
                inputs.await();
            }
        } catch (InterruptedIOException ended) {
            Thread.currentThread().interrupt();
        } finally {
            memory.close();
        }
    }

    private void once() throws InterruptedIOException {
        long begin = System.nanoTime();
        try {
            BuildResult result = build.run(memory);
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
