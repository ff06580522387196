package org.adumbrate.linework.sort;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.Srgb;

/**
 * Sorts colours to the wanted ones that they stand for. Exporters shift a colour by a level or two, so what lies within
 * {@link #TOLERANCE} levels of a wanted colour, in each component, is taken for it; where several are as near as that,
 * the nearest is, and of equally near ones the first.
 *
 * @param <K> what a wanted colour stands for
 */
public final class ColorSort<K> {
    /** In levels of 255: twice what exporters are seen to shift. */
    public static final int TOLERANCE = 4;

    private final Map<K, Srgb> wanted;
    private final Map<Srgb, Optional<K>> known = new HashMap<>();

    private ColorSort(Map<K, Srgb> wanted) {
        this.wanted = new LinkedHashMap<>(wanted);
    }

    /** Sorts by these colours, in the order of the map. */
    public static <K> ColorSort<K> by(Map<K, Srgb> wanted) {
        return new ColorSort<>(wanted);
    }

    /** What a colour stands for, if it is near enough to any that is wanted. Not for several threads at once. */
    public Optional<K> of(Srgb color) {
        return known.computeIfAbsent(color, this::nearest);
    }

    private Optional<K> nearest(Srgb color) {
        K best = null;
        int least = TOLERANCE + 1;
        for (Map.Entry<K, Srgb> entry : wanted.entrySet()) {
            int distance = entry.getValue().distanceTo(color);
            if (distance < least) {
                least = distance;
                best = entry.getKey();
            }
        }
        return Optional.ofNullable(best);
    }

    /**
     * Puts shades of one colour together.
     *
     * @param tallies the colours, the one to name a family by before its shades, as {@link ColorTally#of} gives them
     * @return for each colour the one that its family is named by: itself or an earlier one within the tolerance
     */
    public static Map<Srgb, Srgb> families(List<ColorTally> tallies) {
        Map<Srgb, Srgb> heads = new LinkedHashMap<>();
        Map<Srgb, Srgb> families = new LinkedHashMap<>();
        for (ColorTally tally : tallies) {
            Srgb color = tally.color();
            Srgb head = new ColorSort<>(heads).nearest(color).orElse(color);
            heads.put(head, head);
            families.put(color, head);
        }
        return families;
    }
}
