package org.adumbrate.sheetfile;

import java.util.List;
import java.util.Map;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.Srgb;

/**
 * The heavier line around what certain pens draw.
 *
 * @param width its line weight
 * @param pens the names of the pens that draw what it goes around; empty for those whose role is building
 * @param ink its colour
 */
@Written(orFirstAlone = true)
public record Profile(
        @Key(value = "Its line weight in mm.", byDefault = "0.5 mm", above = 0, max = 10)
        Length width,

        @Key(
                value = "The pens that draw what it goes around, by name; those with role: building where left out.",
                oneOrMany = true)
        List<String> pens,

        @Key(value = "Its colour.", byDefault = "black") Srgb ink) {
    /** Copies the list. */
    public Profile {
        pens = List.copyOf(pens);
    }

    /**
     * The names of the pens that draw what it goes around.
     *
     * @param all the pens of the sheet
     */
    public List<String> pensOf(Map<String, PenStyle> all) {
        return pens.isEmpty()
                ? all.entrySet().stream()
                        .filter(pen -> pen.getValue().role() == PenRole.BUILDING)
                        .map(Map.Entry::getKey)
                        .toList()
                : pens;
    }
}
