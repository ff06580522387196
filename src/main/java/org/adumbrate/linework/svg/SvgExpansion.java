package org.adumbrate.linework.svg;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.adumbrate.linework.clip.TooIntricateException;
import org.xml.sax.Attributes;

/**
 * Counts what {@code use} elements (SVG 1.1, 5.6) add to a drawing, without drawing it: symbols that use each other ten times
 * over make a billion lines out of a few hundred characters. Elements are met in the order of the file; each named one is
 * counted once, and then as often as it is used. What uses itself in a circle counts for less than it may draw; {@link SvgWalk} has a
 * bound of its own.
 */
final class SvgExpansion {
    /** Three hundred trees of a thousand lines. */
    static final int MOST_ELEMENTS = 300_000;

    /** Of attributes; path data above all. */
    static final int MOST_CHARACTERS = 30_000_000;

    private static final int LONGEST = 60;
    private static final String XLINK = "http://www.w3.org/1999/xlink";

    /** Elements that are drawn only where something refers to them. */
    private static final Set<String> NOT_DRAWN = Set.of(
            "clipPath", "defs", "filter", "linearGradient", "marker", "mask", "pattern", "radialGradient", "symbol");

    /** A named element with what is in it, as far as that has no name of its own. */
    private static final class Part {
        private final String id;
        private final int line;
        private final List<Part> children = new ArrayList<>(0);
        private final Map<String, Integer> uses = new HashMap<>(0);
        private long elements;
        private long characters;
        private boolean open;
        private Sum sum;

        Part(String id, int line) {
            this.id = id;
            this.line = line;
        }
    }

    /** What a part draws: in all, and of that by being used again. */
    private record Sum(double elements, double characters, double usedElements, double usedCharacters) {
        static final Sum NOTHING = new Sum(0, 0, 0, 0);

        Sum plus(Sum more) {
            return new Sum(
                    elements + more.elements,
                    characters + more.characters,
                    usedElements + more.usedElements,
                    usedCharacters + more.usedCharacters);
        }

        /** All of it drawn by so many uses. */
        Sum used(int times) {
            double e = times * (elements + 1);
            double c = times * characters;
            return new Sum(e, c, e, c);
        }
    }

    private final Map<String, Part> parts = new HashMap<>();
    private final Deque<Part> open = new ArrayDeque<>();
    private final Part drawing = new Part("", 1);
    private int uses;

    SvgExpansion() {
        open.push(drawing);
    }

    /**
     * Meets the beginning of an element.
     *
     * @throws TooIntricateException if there are more {@code use} elements than may be drawn
     */
    void begin(String name, Attributes attributes, int line) {
        Part part = open.element();
        String id = attributes.getValue("id");
        boolean drawn = !NOT_DRAWN.contains(name);
        if (id != null || !drawn) {
            Part own = new Part(id == null ? "" : id, line);
            if (id != null) {
                parts.putIfAbsent(id, own);
            }
            if (drawn) {
                part.children.add(own);
            }
            part = own;
        }
        open.push(part);
        part.elements++;
        for (int k = 0; k < attributes.getLength(); k++) {
            part.characters += attributes.getValue(k).length();
        }
        if (name.equals("use")) {
            countUse(part, attributes);
        }
    }

    private void countUse(Part part, Attributes attributes) {
        Optional<String> target = referredTo(attributes);
        if (target.isPresent()) {
            part.uses.merge(target.get(), 1, Integer::sum);
            if (++uses > MOST_ELEMENTS) {
                throw tooMany(target.get(), parts.get(target.get()));
            }
        }
    }

    /** Meets the end of the element that was begun last. */
    void end() {
        open.pop();
    }

    /**
     * Adds everything up, once the file has ended.
     *
     * @throws TooIntricateException if uses draw more than any drawing has
     */
    void require() {
        if (uses > 0) {
            sum(drawing, 0);
        }
    }

    private Sum sum(Part part, int depth) {
        if (depth > SvgWalk.DEEPEST) {
            throw new TooIntricateException(SvgWalk.TOO_DEEP);
        }
        if (part.open) {
            // used within itself, where it is not drawn
            return Sum.NOTHING;
        }
        if (part.sum == null) {
            part.open = true;
            Sum sum = new Sum(part.elements, part.characters, 0, 0);
            for (Part child : part.children) {
                sum = sum.plus(sum(child, depth + 1));
            }
            for (Map.Entry<String, Integer> use : part.uses.entrySet()) {
                Part target = parts.get(use.getKey());
                if (target != null) {
                    sum = sum.plus(sum(target, depth + 1).used(use.getValue()));
                    require(sum, target);
                }
            }
            part.open = false;
            part.sum = sum;
        }
        return part.sum;
    }

    private static void require(Sum sum, Part target) {
        if (sum.usedElements > MOST_ELEMENTS || sum.usedCharacters > MOST_CHARACTERS) {
            throw tooMany(target.id, target);
        }
    }

    /** @param target what the id names; null if that is still to come */
    private static TooIntricateException tooMany(String id, Part target) {
        String where = target == null ? "" : " (line " + target.line + ")";
        String name = id.length() <= LONGEST ? id : id.substring(0, LONGEST) + "...";
        return new TooIntricateException("draws more than " + MOST_ELEMENTS + " elements, or " + MOST_CHARACTERS
                + " characters of them, by <use>, at last of #" + name + where);
    }

    private static Optional<String> referredTo(Attributes attributes) {
        String plain = attributes.getValue("href");
        String reference = plain == null || plain.isEmpty() ? attributes.getValue(XLINK, "href") : plain;
        return Optional.ofNullable(reference).filter(r -> r.startsWith("#")).map(r -> r.substring(1));
    }
}
