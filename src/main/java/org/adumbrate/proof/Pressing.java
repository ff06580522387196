package org.adumbrate.proof;

import java.util.concurrent.TimeUnit;
import org.adumbrate.proof.http.Handler;

/**
 * What a page waits for: pictures, and what they are made of. What only follows a change lets them go first, so that it takes no time from
 * them. Safe for use by several threads.
 */
final class Pressing {
    private int going;
    private long lastEnd = System.nanoTime();

    /** The same answers, for which others wait. */
    Handler first(Handler route) {
        return ask -> {
            begin();
            try {
                return route.answer(ask);
            } finally {
                end();
            }
        };
    }

    private synchronized void begin() {
        going++;
    }

    private synchronized void end() {
        going--;
        lastEnd = System.nanoTime();
        notifyAll();
    }

    /**
     * Waits until nothing has been waited for during a moment.
     *
     * @param calmMs the moment, in milliseconds
     * @param mostMs to wait at most, in milliseconds
     */
    synchronized void await(long calmMs, long mostMs) throws InterruptedException {
        long end = System.nanoTime() + TimeUnit.MILLISECONDS.toNanos(mostMs);
        long calm = TimeUnit.MILLISECONDS.toNanos(calmMs);
        while (true) {
            long now = System.nanoTime();
            long left = Math.min(end - now, going > 0 ? Long.MAX_VALUE : lastEnd + calm - now);
            if (left <= 0) {
                return;
            }
            TimeUnit.NANOSECONDS.timedWait(this, left);
        }
    }
}
