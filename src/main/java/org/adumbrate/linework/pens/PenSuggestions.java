package org.adumbrate.linework.pens;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.sort.ColorSort;
import org.adumbrate.linework.sort.ColorTally;

/**
 * Suggests pens for what line sheets hold. Names speak first: of layers, and of a file that alone holds a colour. Then
 * the strokes do: uprights under one horizon are height lines; the darkest colour is the cut, if it comes in
 * long pieces or encloses what no other line shows in; the most line of
 * all is the building; the rest is told by hue, by whether anything stands upright, and by how short its strokes are.
 * Every guess says its reason; none is sure.
 */
public final class PenSuggestions {
    private PenSuggestions() {}

    /** Suggests a pen for each colour of one sheet, the longest first. */
    public static List<PenSuggestion> of(LineSheet sheet) {
        return of(List.of(sheet));
    }

    /**
     * Suggests a pen for each colour of sheets that are drawn over each other, the longest first. A colour that occurs in
     * several is judged by the first that has it.
     */
    public static List<PenSuggestion> of(List<LineSheet> sheets) {
        List<ColorLook> looks = looks(sheets);
        Map<Srgb, Clue> clues = new HashMap<>();
        for (ColorLook look : looks) {
            NameClues.of(look, sheets).ifPresent(clue -> clues.put(look.color(), clue));
        }
        StrokeClues.complete(looks, clues);
        return looks.stream()
                .map(look -> new PenSuggestion(
                        look.colors(),
                        clues.get(look.color()).role(),
                        clues.get(look.color()).reason()))
                .toList();
    }

    private static List<ColorLook> looks(List<LineSheet> sheets) {
        List<ColorLook> looks = new ArrayList<>();
        for (LineSheet sheet : sheets) {
            Map<Srgb, List<Srgb>> families = new LinkedHashMap<>();
            ColorSort.families(ColorTally.of(sheet))
                    .forEach((color, head) -> families.computeIfAbsent(head, h -> new ArrayList<>())
                            .add(color));
            families.forEach((head, colors) -> {
                OptionalInt earlier = IntStream.range(0, looks.size())
                        .filter(n -> looks.get(n).isShade(head))
                        .findFirst();
                if (earlier.isPresent()) {
                    looks.set(earlier.getAsInt(), looks.get(earlier.getAsInt()).alsoIn(sheet, colors));
                } else {
                    looks.add(ColorLook.of(sheet, colors));
                }
            });
        }
        looks.sort((a, b) -> Double.compare(b.lengthMm(), a.lengthMm()));
        return looks;
    }
}
