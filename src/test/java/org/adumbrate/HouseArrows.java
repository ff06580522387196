package org.adumbrate;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The arrows between the rooms of the house: which package knows which. Rooms are the packages right under the project's own.
 * Seen from another room, all that lies in a room counts as the room; within it, its inner rooms have arrows of their own.
 *
 * @param reasons by arrow, such as {@code "drawing -> underlay"}, why it is there
 */
record HouseArrows(Map<String, String> reasons) {
    private static final String HOUSE = "org.adumbrate.";
    private static final String ARROW = " -> ";

    /** The table of arrows, {@code from -> to: reason}, one a line. */
    static HouseArrows stated() {
        Map<String, String> reasons = new LinkedHashMap<>();
        text().lines().filter(line -> !line.isBlank() && !line.startsWith("#")).forEach(line -> {
            String[] parts = line.split(":", 2);
            if (reasons.put(parts[0].strip(), parts[1].strip()) != null) {
                throw new IllegalStateException("stated twice: " + line);
            }
        });
        return new HouseArrows(reasons);
    }

    private static String text() {
        try (InputStream in = HouseArrows.class.getResourceAsStream("house-arrows.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The arrows that the code has. */
    static Set<String> real(JavaClasses classes) {
        Set<String> arrows = new TreeSet<>();
        for (JavaClass from : classes) {
            for (Dependency dependency : from.getDirectDependenciesFromSelf()) {
                JavaClass to = dependency.getTargetClass().getBaseComponentType();
                if (to.getPackageName().startsWith(HOUSE) && !inner(from).equals(inner(to))) {
                    boolean within = room(from).equals(room(to));
                    arrows.add(within ? inner(from) + ARROW + inner(to) : room(from) + ARROW + room(to));
                }
            }
        }
        return arrows;
    }

    private static String room(JavaClass type) {
        return inner(type).split("\\.")[0];
    }

    private static String inner(JavaClass type) {
        return type.getPackageName().substring(HOUSE.length());
    }

    /**
     * The diagram of the guide: floors from the top down, a room as low as its arrows let it be, and below each the rooms that
     * it knows.
     */
    String diagram() {
        Map<String, Set<String>> known = new TreeMap<>();
        reasons.keySet().stream().filter(arrow -> !arrow.contains(".")).forEach(arrow -> {
            String[] ends = arrow.split(ARROW);
            known.computeIfAbsent(ends[0], room -> new TreeSet<>()).add(ends[1]);
            known.computeIfAbsent(ends[1], room -> new TreeSet<>());
        });
        Map<Integer, List<String>> floors = new TreeMap<>(Comparator.<Integer>reverseOrder());
        known.keySet().forEach(room -> floors.computeIfAbsent(floor(room, known), floor -> new ArrayList<>())
                .add(room));
        StringBuilder text = new StringBuilder();
        floors.forEach((floor, rooms) -> {
            for (String room : rooms) {
                text.append("    ").append(floor).append("  ").append(room);
                if (!known.get(room).isEmpty()) {
                    text.append(ARROW).append(String.join(", ", known.get(room)));
                }
                text.append('\n');
            }
        });
        return text.toString();
    }

    private static int floor(String room, Map<String, Set<String>> known) {
        return known.get(room).stream()
                .mapToInt(below -> 1 + floor(below, known))
                .max()
                .orElse(0);
    }
}
