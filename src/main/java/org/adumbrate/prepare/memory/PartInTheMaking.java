package org.adumbrate.prepare.memory;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;

/** A part that one run is making and others may be waiting for. */
final class PartInTheMaking {
    private final CompletableFuture<Object> result = new CompletableFuture<>();
    private final Thread maker = Thread.currentThread();

    void done(Object value) {
        result.complete(value);
    }

    void failed(Throwable reason) {
        result.completeExceptionally(reason);
    }

    /** True in the thread that makes it, which must not wait for itself. */
    boolean isOwn() {
        return maker == Thread.currentThread();
    }

    /**
     * Waits for the part.
     *
     * @throws Superseded if the run that was making it has been superseded, and left it unmade
     */
    Object await() throws IOException {
        try {
            return result.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new InterruptedIOException("stopped");
        } catch (ExecutionException e) {
            if (e.getCause() instanceof IOException fault) {
                throw fault;
            }
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            if (e.getCause() instanceof RuntimeException failure) {
                throw failure;
            }
            throw new IOException(e.getCause());
        }
    }
}
