package org.adumbrate.build;

import java.io.IOException;
import java.lang.ref.SoftReference;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.adumbrate.build.kept.KeptFolder;

/**
 * What stages of a build made, kept for the next one: in memory for builds of the same run, and in a folder for those of
 * other runs. A stage is found again by its name and by the content of everything that it depends on, so nothing that is
 * kept can be out of date. Memory is bounded by number, and given up by the Java machine before it runs short; the folder
 * is bounded by size. Safe for use by several threads within a build; builds must not overlap.
 */
public final class Reuse {
    /** Many times what a sheet has, so that going back to an earlier state is quick as well. */
    private static final int MOST = 400;

    private record Key(Stage stage, List<?> parts) {}

    /**
     * How often a stage was found again and how often it was made.
     *
     * @param reused found again
     * @param made made anew
     */
    public record Count(int reused, int made) {
        private static final Count ZERO = new Count(0, 0);

        private Count plus(boolean found) {
            return new Count(reused + (found ? 1 : 0), made + (found ? 0 : 1));
        }
    }

    private static final String FOLDER = ".adumbrate-kept";

    private final boolean remembers;
    private final boolean writes;
    private Optional<KeptFolder> folder = Optional.empty();
    private final Digests digests = new Digests();
    private final Map<Key, SoftReference<Object>> kept = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, SoftReference<Object>> eldest) {
            return size() > MOST;
        }
    };
    private final Map<Key, Object> fresh = new HashMap<>();
    private final Map<String, Count> counts = new TreeMap<>();

    private Reuse(boolean remembers, boolean writes) {
        this.remembers = remembers;
        this.writes = writes;
    }

    /** Keeps nothing; for a single build. */
    public static Reuse none() {
        return new Reuse(false, false);
    }

    /** Keeps what is made in memory. */
    public static Reuse inMemory() {
        return new Reuse(true, false);
    }

    /** Keeps what is made in memory, and in a folder beside the outputs. */
    public static Reuse besideOutputs() {
        return new Reuse(true, true);
    }

    /** Begins a build: the account is empty. */
    synchronized void begin() {
        counts.clear();
        fresh.clear();
        digests.begin();
    }

    /** Settles where the outputs of the build stand. */
    synchronized void outputsIn(Path outputs) {
        if (writes) {
            folder = Optional.of(new KeptFolder(outputs.resolve(FOLDER)));
        }
    }

    /** Ends a build. What it made is kept only if no file changed while it was read. */
    synchronized void end() {
        if (digests.stillTrue()) {
            fresh.forEach((key, made) -> {
                kept.put(key, new SoftReference<>(made));
                if (key.stage().written()) {
                    folder.ifPresent(
                            disk -> disk.keep(key.stage().word(), key.stage().type(), key.parts(), made));
                }
            });
            folder.ifPresent(KeptFolder::trim);
        }
        fresh.clear();
    }

    /** A file's content as a key; empty where nothing is kept. */
    String digest(Path file) {
        return remembers ? digests.of(file) : "";
    }

    /**
     * What a stage makes, or made before of the same.
     *
     * @param stage which
     * @param parts all that it depends on, to be compared by value
     * @param work makes it; what it makes must not change afterwards
     */
    <T> T of(Stage stage, List<?> parts, Stages.Work<T> work) throws IOException {
        if (!remembers) {
            return work.run();
        }
        Optional<T> found = find(stage, parts);
        if (found.isPresent()) {
            return found.get();
        }
        T made = work.run();
        keep(stage, parts, made);
        return made;
    }

    /** What a stage made before of the same, if that is kept; what is not found counts as made. */
    @SuppressWarnings("unchecked")
    <T> Optional<T> find(Stage stage, List<?> parts) {
        if (!remembers) {
            return Optional.empty();
        }
        Key key = new Key(stage, parts);
        Optional<?> found = remembered(key);
        if (found.isEmpty() && stage.written()) {
            found = folder().flatMap(disk -> disk.find(stage.word(), stage.type(), parts));
        }
        count(key, found);
        return (Optional<T>) found;
    }

    private synchronized Optional<KeptFolder> folder() {
        return folder;
    }

    private synchronized Optional<Object> remembered(Key key) {
        SoftReference<Object> held = kept.get(key);
        return held == null ? Optional.empty() : Optional.ofNullable(held.get());
    }

    private synchronized void count(Key key, Optional<?> found) {
        String stage = key.stage().word();
        counts.put(stage, counts.getOrDefault(stage, Count.ZERO).plus(found.isPresent()));
        found.ifPresent(value -> kept.put(key, new SoftReference<>(value)));
    }

    /** Keeps what a stage made, once the build has ended. */
    synchronized void keep(Stage stage, List<?> parts, Object made) {
        if (remembers) {
            fresh.put(new Key(stage, parts), made);
        }
    }

    /** What was reused and what was made by the last build, by stage; stages that it did not come to are missing. */
    public synchronized Map<String, Count> account() {
        return new TreeMap<>(counts);
    }
}
