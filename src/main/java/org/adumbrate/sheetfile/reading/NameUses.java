package org.adumbrate.sheetfile.reading;

import java.util.List;

/**
 * Where a sheet file refers to names that it gives elsewhere.
 *
 * @param mapping the key whose keys are such names
 * @param where a pattern of the key paths of what refers to them
 * @param ending what follows the name there
 */
public record NameUses(String mapping, String where, String ending) {
    static final String OF_FLOORS = "(figures\\[\\d+\\]|planting\\.[^.]+)\\.floor";
    static final String OF_REGIONS = "(veils|planting|birds)\\.[^.]+\\.region|.*\\.behind\\[\\d+\\]";
    static final String OF_PENS = "profile\\.pens\\[\\d+\\]";
    static final String OF_LINES = "(regions|veils|floors)\\.[^.]+\\.of\\[\\d+\\]";
    static final String OF_LAYERS = "order\\[\\d+\\]";

    /** What the name of a veil's layer has behind the name of the veil. */
    static final String FILL = "-fill";

    private static final List<NameUses> ALL = List.of(
            new NameUses("floors", OF_FLOORS, ""),
            new NameUses("regions", OF_REGIONS, ""),
            new NameUses("pens", OF_PENS, ""),
            new NameUses("pens", OF_LINES, ""),
            new NameUses("pens", OF_LAYERS, ""),
            new NameUses("veils", OF_LAYERS, FILL));

    /** The uses of the names in a mapping. */
    public static List<NameUses> of(String mapping) {
        return ALL.stream().filter(uses -> uses.mapping().equals(mapping)).toList();
    }
}
