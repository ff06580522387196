package org.adumbrate.raster;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.HashMap;
import java.util.Map;

/**
 * Computes the strips of a canvas by several threads and hands them on in order, never more than a few at a time.
 *
 * @param <C> what one thread works with, made once for it
 * @param <T> what becomes of a strip
 */
public final class OrderedStrips<C, T> {
    /** Makes what one thread works with. */
    public interface Context<C> {
        /** Called once by each thread, before its first strip. */
        C make() throws IOException;
    }

    /** Computes a strip; called by several threads at once. */
    public interface Work<C, T> {
        /** Computes strip number {@code strip}, from 0 at the top. */
        T compute(C context, int strip) throws IOException;
    }

    /** Takes the strips in order; never called by two threads at once. */
    public interface Taker<T> {
        /** Takes strip number {@code strip}. */
        void take(int strip, T result) throws IOException;
    }

    private final int count;
    private final int window;
    private final Context<C> context;
    private final Work<C, T> work;
    private final Taker<T> taker;

    private final Object monitor = new Object();
    private final Map<Integer, T> waiting = new HashMap<>();
    private int next;
    private int taken;
    private boolean taking;
    private int helpers;
    private Throwable failure;

    private OrderedStrips(int count, int window, Context<C> context, Work<C, T> work, Taker<T> taker) {
        this.count = count;
        this.window = window;
        this.context = context;
        this.work = work;
        this.taker = taker;
    }

    /** How many strips are begun and not yet taken, at most, with so many threads. */
    public static int window(int threads) {
        return 2 * threads;
    }

    /**
     * Computes strips 0 to count - 1. The calling thread takes part. The first failure ends the work and is thrown.
     *
     * @param count number of strips
     * @param threads number of threads, at least 1
     * @throws IOException the failure of a strip, or {@link InterruptedIOException} if the thread is interrupted
     */
    public static <C, T> void run(int count, int threads, Context<C> context, Work<C, T> work, Taker<T> taker)
            throws IOException {
        new OrderedStrips<>(count, window(threads), context, work, taker).run(Math.min(threads, Math.max(1, count)));
    }

    private void run(int threads) throws IOException {
        for (int k = 2; k <= threads; k++) {
            Thread other = new Thread(this::helpUntilDone, "strips " + k);
            other.setDaemon(true);
            other.start();
        }
        workUntilDone();
        awaitHelpers();
        rethrow();
    }

    /** A thread that comes when all strips are begun has nothing to do, and nobody waits for it. */
    private void helpUntilDone() {
        synchronized (monitor) {
            if (failure != null || next >= count) {
                return;
            }
            helpers++;
        }
        workUntilDone();
        synchronized (monitor) {
            helpers--;
            monitor.notifyAll();
        }
    }

    private void awaitHelpers() {
        boolean interrupted = false;
        synchronized (monitor) {
            while (helpers > 0) {
                try {
                    monitor.wait();
                } catch (InterruptedException e) {
                    fail(new InterruptedIOException("stopped while strips were computed"));
                    interrupted = true;
                }
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }

    private void workUntilDone() {
        try {
            C own = context.make();
            for (int strip = claim(); strip >= 0; strip = claim()) {
                T result = work.compute(own, strip);
                deliver(strip, result);
            }
        } catch (Throwable e) {
            fail(e);
        }
    }

    private int claim() throws InterruptedException {
        synchronized (monitor) {
            while (failure == null && next < count && next >= taken + window) {
                monitor.wait();
            }
            return failure == null && next < count ? next++ : -1;
        }
    }

    /** Whichever thread completes the strip that is due takes it and all that are ready after it. */
    private void deliver(int strip, T result) throws IOException {
        synchronized (monitor) {
            waiting.put(strip, result);
            if (taking) {
                return;
            }
            taking = true;
        }
        for (T due = due(); due != null; due = due()) {
            taker.take(taken, due);
            synchronized (monitor) {
                taken++;
                monitor.notifyAll();
            }
        }
    }

    private T due() {
        synchronized (monitor) {
            T due = failure == null ? waiting.remove(taken) : null;
            taking = due != null;
            return due;
        }
    }

    private void fail(Throwable e) {
        synchronized (monitor) {
            if (failure == null) {
                failure = e;
            }
            monitor.notifyAll();
        }
    }

    private void rethrow() throws IOException {
        Throwable e;
        synchronized (monitor) {
            e = failure;
        }
        if (e instanceof IOException fault) {
            throw fault;
        }
        if (e instanceof RuntimeException fault) {
            throw fault;
        }
        if (e instanceof Error error) {
            throw error;
        }
        if (e != null) {
            throw new IOException(e);
        }
    }
}
