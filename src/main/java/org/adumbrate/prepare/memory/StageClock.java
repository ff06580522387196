package org.adumbrate.prepare.memory;

import java.io.IOException;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** Times the stages of a build and tells a listener how far it has come. */
public final class StageClock {
    /** Hears of progress; calls come from several threads, one at a time. */
    public interface Listener {
        /** Hears that a stage has come so far, 0 to 1. */
        void at(String stage, double share);

        /** Hears nothing. */
        Listener SILENT = (stage, share) -> {};
    }

    /** The work of a stage. */
    public interface Work<T> {
        /** Does it. */
        T run() throws IOException;
    }

    private final Listener listener;
    private final Map<String, Double> seconds = new LinkedHashMap<>();

    /** @param listener hears of progress */
    public StageClock(Listener listener) {
        this.listener = listener;
    }

    /** A stage that is running. */
    public final class Timer {
        private final String stage;
        private final long begin = System.nanoTime();

        private Timer(String stage) {
            this.stage = stage;
        }

        /** Ends the stage and adds the time it took to its account. */
        public void end() {
            seconds.merge(stage, (System.nanoTime() - begin) / 1e9, Double::sum);
        }
    }

    /** Begins a stage. */
    public Timer begin(String stage) {
        listener.at(stage, 0);
        return new Timer(stage);
    }

    /** Runs a stage and adds the time it took to its account. */
    public <T> T run(String stage, Work<T> work) throws IOException {
        Timer timer = begin(stage);
        T result = work.run();
        timer.end();
        return result;
    }

    /** Tells how far a stage has come, 0 to 1. */
    public void at(String stage, double share) {
        listener.at(stage, share);
    }

    /** Seconds by stage, in the order in which they began. */
    public Map<String, Double> seconds() {
        return Collections.unmodifiableMap(seconds);
    }
}
