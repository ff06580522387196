package org.adumbrate.prepare.memory;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.adumbrate.fault.Refusal;

/**
 * Work that goes on beside other work.
 *
 * @param <T> its result
 */
public final class SideTask<T> {
    private final FutureTask<T> task;

    private SideTask(FutureTask<T> task) {
        this.task = task;
    }

    /** Begins work in a thread of its own, which does not keep the program alive. */
    public static <T> SideTask<T> begin(String name, Callable<T> work) {
        FutureTask<T> task = new FutureTask<>(work);
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        thread.start();
        return new SideTask<>(task);
    }

    /** Work that is done where its result is asked for. */
    static <T> SideTask<T> own(Callable<T> work) {
        return new SideTask<>(new FutureTask<>(work));
    }

    /** Interrupts the work, if it has not ended; there will be no result. */
    void stop() {
        task.cancel(true);
    }

    /** Waits for the result; work that no thread has come to yet is done here. Whatever it failed by is thrown. */
    public T result() throws IOException, Refusal {
        task.run();
        try {
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("stopped");
        } catch (ExecutionException e) {
            throw thrown(e.getCause());
        }
    }

    private static IOException thrown(Throwable cause) throws Refusal {
        if (cause instanceof Refusal refusal) {
            throw refusal;
        }
        if (cause instanceof RuntimeException failure) {
            throw failure;
        }
        if (cause instanceof Error error) {
            throw error;
        }
        return cause instanceof IOException fault ? fault : new IOException(cause);
    }
}
