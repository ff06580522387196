package org.adumbrate.prepare.memory;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Does a few independent things at once. */
public final class InParallel {
    private InParallel() {}

    /** Runs all tasks, each in a thread of its own, and gives their results in order; the first failure is thrown. */
    public static <T> List<T> all(List<Callable<T>> tasks) throws IOException {
        if (tasks.isEmpty()) {
            return List.of();
        }
        ExecutorService threads = Executors.newFixedThreadPool(tasks.size());
        try {
            List<T> results = new ArrayList<>();
            for (Future<T> future : threads.invokeAll(tasks)) {
                results.add(future.get());
            }
            return results;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("stopped");
        } catch (ExecutionException e) {
            throw asIo(e.getCause());
        } finally {
            threads.shutdownNow();
        }
    }

    private static IOException asIo(Throwable cause) {
        if (cause instanceof RuntimeException failure) {
            throw failure;
        }
        if (cause instanceof Error error) {
            throw error;
        }
        return cause instanceof IOException fault ? fault : new IOException(cause);
    }
}
