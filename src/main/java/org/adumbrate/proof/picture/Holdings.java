package org.adumbrate.proof.picture;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a page may fetch, by short names: the same object has the same name, so that a page sees what it has already. What no recent
 * recipe named is let go. Safe for use by several threads.
 */
final class Holdings {
    /** Recipes that a page may still be fetching for: more than edits can follow each other on their way. */
    private static final int RECENT = 12;

    /** Gives the bytes of what is held. */
    interface Packing {
        byte[] bytes();
    }

    private record Held(String id, Packing packing) {}

    private final IdentityHashMap<Object, Held> byObject = new IdentityHashMap<>();
    private final Map<String, Held> byId = new HashMap<>();
    private final Deque<Recipe> recent = new ArrayDeque<>();
    private long names;

    /** What one recipe names. */
    final class Recipe {
        private final IdentityHashMap<Object, Held> named = new IdentityHashMap<>();

        /**
         * The name of something that the recipe holds.
         *
         * @param packing gives its bytes, when they are fetched
         */
        String name(Object thing, Packing packing) {
            synchronized (Holdings.this) {
                Held held = byObject.get(thing);
                if (held == null) {
                    held = new Held("h" + names++, packing);
                    byObject.put(thing, held);
                    byId.put(held.id(), held);
                }
                named.put(thing, held);
                return held.id();
            }
        }
    }

    /** Begins a recipe; what only old ones named is let go. */
    synchronized Recipe begin() {
        Recipe recipe = new Recipe();
        recent.add(recipe);
        if (recent.size() > RECENT) {
            Recipe old = recent.remove();
            old.named.forEach((thing, held) -> {
                if (recent.stream().noneMatch(other -> other.named.containsKey(thing))) {
                    byObject.remove(thing);
                    byId.remove(held.id());
                }
            });
        }
        return recipe;
    }

    /** The bytes of some, one after the other; nothing where one is not held any more. */
    Optional<byte[]> bytes(List<String> ids) {
        byte[][] parts = new byte[ids.size()][];
        long length = 0;
        for (int k = 0; k < parts.length; k++) {
            Held held;
            synchronized (this) {
                held = byId.get(ids.get(k));
            }
            if (held == null) {
                return Optional.empty();
            }
            parts[k] = held.packing().bytes();
            length += parts[k].length;
        }
        byte[] all = new byte[Math.toIntExact(length)];
        int at = 0;
        for (byte[] part : parts) {
            System.arraycopy(part, 0, all, at, part.length);
            at += part.length;
        }
        return Optional.of(all);
    }
}
