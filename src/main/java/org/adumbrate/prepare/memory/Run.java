package org.adumbrate.prepare.memory;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * One run over a {@link Memory}: from the content of some files to pictures, making what is not remembered. It can be
 * superseded, and then ends at its next step. Safe for use by several threads.
 */
public final class Run implements AutoCloseable {
    /** Makes a part. */
    public interface Work<T> {
        /** Makes it; what it makes must not change afterwards. */
        T run() throws IOException;
    }

    /**
     * How often a part was found again and how often it was made.
     *
     * @param reused found again
     * @param made made
     */
    public record Count(int reused, int made) {
        private static final Count ZERO = new Count(0, 0);

        private Count plus(boolean found) {
            return new Count(reused + (found ? 1 : 0), made + (found ? 0 : 1));
        }
    }

    private final Memory memory;
    private final long number;
    private final DigestsInUse digests;
    private final Map<PartKey, Object> fresh = new HashMap<>();
    private final Map<String, Count> counts = new TreeMap<>();
    private Optional<Shelf> shelf = Optional.empty();
    private volatile boolean superseded;
    private volatile boolean ended;

    Run(Memory memory, long number) {
        this.memory = memory;
        this.number = number;
        this.digests = memory.digests().begin();
    }

    /** Settles where the outputs of the run stand, and so what shelf it has. */
    public synchronized void outputsIn(Path outputs) {
        shelf = memory.shelf(outputs);
    }

    /** Lets the run end at its next step: a newer one has taken its place. */
    public void supersede() {
        superseded = true;
    }

    /**
     * Takes the next step of the work.
     *
     * @throws Superseded if a newer run has taken this one's place
     */
    public void step() throws Superseded {
        if (superseded) {
            throw new Superseded();
        }
    }

    /** A file's content as part of a key; its name, where nothing outlasts the run. */
    public String digest(Path file) {
        return memory.remembers() ? digests.of(file) : file.toString();
    }

    /**
     * A part as it is remembered or, if it is not, as the work makes it.
     *
     * @param part what it is
     * @param type its type
     * @param from all that it depends on, compared by value
     */
    public <T> T of(Part part, Class<T> type, List<?> from, Work<T> work) throws IOException {
        step();
        PartKey key = new PartKey(part, type, from);
        while (true) {
            Optional<T> found = find(key, type);
            if (found.isPresent()) {
                count(part, true);
                return found.get();
            }
            PartInTheMaking mine = new PartInTheMaking();
            PartInTheMaking other = memory.inTheMaking().putIfAbsent(key, mine);
            if (other == null) {
                return make(key, mine, work);
            }
            if (other.isOwn()) {
                throw new IllegalStateException(part + " asks for itself");
            }
            try {
                return type.cast(other.await());
            } catch (Superseded left) {
                step();
            }
        }
    }

    private <T> T make(PartKey key, PartInTheMaking mine, Work<T> work) throws IOException {
        try {
            T made = work.run();
            count(key.part(), false);
            keep(key, made);
            mine.done(made);
            return made;
        } catch (IOException | RuntimeException | Error reason) {
            mine.failed(reason);
            throw reason;
        } finally {
            memory.inTheMaking().remove(key, mine);
        }
    }

    /** A part that is remembered; what is not found counts as made. */
    public <T> Optional<T> find(Part part, Class<T> type, List<?> from) {
        Optional<T> found = find(new PartKey(part, type, from), type);
        count(part, found.isPresent());
        return found;
    }

    private <T> Optional<T> find(PartKey key, Class<T> type) {
        Optional<Object> held = made(key).or(() -> memory.find(key, number));
        if (held.isPresent()) {
            return held.map(type::cast);
        }
        if (!key.part().written()) {
            return Optional.empty();
        }
        Optional<T> kept = shelf().flatMap(disk -> disk.find(key.part().word(), type, key.from()));
        kept.ifPresent(value -> memory.remember(Map.of(key, value), number));
        return kept;
    }

    private synchronized Optional<Shelf> shelf() {
        return shelf;
    }

    private synchronized Optional<Object> made(PartKey key) {
        return Optional.ofNullable(fresh.get(key));
    }

    private synchronized void count(Part part, boolean found) {
        if (!part.written()) {
            return;
        }
        counts.put(part.word(), counts.getOrDefault(part.word(), Count.ZERO).plus(found));
    }

    /** Remembers a part that was made elsewhere, once the run has ended. */
    public <T> void keep(Part part, Class<T> type, List<?> from, T made) {
        keep(new PartKey(part, type, from), made);
    }

    private synchronized void keep(PartKey key, Object made) {
        fresh.put(key, made);
    }

    /** Ends the run. What it made is remembered only if no file changed while it was read. */
    @Override
    public synchronized void close() {
        if (memory.remembers() && digests.stillTrue()) {
            memory.remember(fresh, number);
            shelf.ifPresent(disk -> memory.keep(disk, fresh));
        }
        fresh.clear();
        ended = true;
    }

    /** Whether it has ended. */
    public boolean hasEnded() {
        return ended;
    }

    /** What was reused and what was made, by part, of all that is worth keeping; parts that it did not come to are missing. */
    public synchronized Map<String, Count> account() {
        return memory.remembers() ? new TreeMap<>(counts) : Map.of();
    }
}
