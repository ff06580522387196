package org.adumbrate.prepare.memory;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;

/**
 * Remembers the parts of sheets, so that a run makes only what has changed: in memory, and if a shelf is given there, too, for
 * later runs of the program. Each part goes by the content of everything that it depends on, so nothing that is remembered can
 * be out of date. Runs may overlap; what two of them need at once is made once. What is remembered must never be written to.
 *
 * <p>Memory is bounded by number: what the latest runs used is held, what lies longer back is given up by the Java machine
 * before it runs short.
 */
public final class Memory implements AutoCloseable {
    /** Many times what a sheet has, so that going back to an earlier state is quick as well. */
    private static final int MOST = 4000;

    /** What this many runs used last is held for certain: a sheet is made ready by one and seen by another, twice for one edit. */
    private static final int HELD_RUNS = 4;

    private final boolean remembers;
    private final Optional<Function<Path, Shelf>> shelves;
    private final Map<PartKey, Remembered> parts = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<PartKey, Remembered> eldest) {
            return size() > MOST;
        }
    };
    private final Map<PartKey, PartInTheMaking> inTheMaking = new ConcurrentHashMap<>();
    private final Digests digests = new Digests();
    private final ExecutorService keeper = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "keeping parts for later runs");
        thread.setDaemon(true);
        return thread;
    });
    private long runs;

    private Memory(boolean remembers, Optional<Function<Path, Shelf>> shelves) {
        this.remembers = remembers;
        this.shelves = shelves;
    }

    /** Remembers nothing; for a single run. */
    public static Memory none() {
        return new Memory(false, Optional.empty());
    }

    /** Remembers as long as the program runs. */
    public static Memory inMemory() {
        return new Memory(true, Optional.empty());
    }

    /**
     * Remembers, and keeps on a shelf.
     *
     * @param shelves the shelf for outputs that stand in a folder
     */
    public static Memory with(Function<Path, Shelf> shelves) {
        return new Memory(true, Optional.of(shelves));
    }

    /** Begins a run. */
    public synchronized Run begin() {
        runs++;
        return new Run(this, runs);
    }

    boolean remembers() {
        return remembers;
    }

    Digests digests() {
        return digests;
    }

    Optional<Shelf> shelf(Path outputs) {
        return shelves.map(shelf -> shelf.apply(outputs));
    }

    Map<PartKey, PartInTheMaking> inTheMaking() {
        return inTheMaking;
    }

    synchronized Optional<Object> find(PartKey key, long run) {
        Remembered held = parts.get(key);
        return held == null ? Optional.empty() : held.usedBy(run);
    }

    synchronized void remember(Map<PartKey, Object> made, long run) {
        made.forEach((key, value) -> parts.put(key, new Remembered(value, run)));
        parts.values().forEach(part -> part.loosenIfUsedBefore(runs - HELD_RUNS));
    }

    /** Puts what was made on the shelf, later and in a thread of its own, so that no picture waits for it. */
    void keep(Shelf shelf, Map<PartKey, Object> made) {
        Map<PartKey, Object> written = new HashMap<>();
        made.forEach((key, value) -> {
            if (key.part().written()) {
                written.put(key, value);
            }
        });
        keeper.execute(() -> {
            written.forEach((key, value) -> shelf.keep(key.part().word(), key.type(), key.from(), value));
            shelf.trim();
        });
    }

    /** Waits until all that is to be kept is on its shelf; nothing is remembered any more afterwards. */
    @Override
    public void close() {
        keeper.shutdown();
        boolean interrupted = false;
        while (!keeper.isTerminated()) {
            try {
                keeper.awaitTermination(1, TimeUnit.MINUTES);
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
    }
}
