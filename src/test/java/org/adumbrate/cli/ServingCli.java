package org.adumbrate.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** A run of the program that serves until it is ended. */
final class ServingCli implements AutoCloseable {
    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();
    private final AtomicInteger code = new AtomicInteger(-1);
    private final Thread thread;

    private ServingCli(String... args) {
        this.thread = new Thread(
                () -> code.set(Adumbrate.run(args, new PrintWriter(out, true), new PrintWriter(err, true))), "serving");
    }

    /** Begins, and waits until the address is printed, or the run has ended. */
    static ServingCli begin(String... args) throws InterruptedException {
        ServingCli run = new ServingCli(args);
        run.thread.start();
        while (run.thread.isAlive() && !run.out.toString().contains("http://")) {
            TimeUnit.MILLISECONDS.sleep(20);
        }
        return run;
    }

    String firstLine() {
        return out.toString().lines().findFirst().orElse("");
    }

    /** Ends it, and says how it ended. */
    Cli end() throws InterruptedException {
        thread.interrupt();
        thread.join();
        return new Cli(code.get(), out.toString(), err.toString());
    }

    @Override
    public void close() {
        thread.interrupt();
        while (thread.isAlive()) {
            try {
                thread.join();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
