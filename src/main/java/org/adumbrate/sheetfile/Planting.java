package org.adumbrate.sheetfile;

import java.util.List;
import java.util.Optional;

/**
 * Plants scattered over a region.
 *
 * @param outlines what shows them, at least one, taken in turn by chance
 * @param region the name of the region that their feet stand in
 * @param floor the name of the floor they stand on; may be left out where there is one floor only
 * @param height how tall they are on average; the outlines' own nominal heights where left out
 * @param variation how far a height may differ from that, either way
 * @param spacing from plant to plant, on the floor
 * @param seed another number gives another scatter
 * @param behind the names of regions that hide them, besides a depth pass
 * @param look what is different about their look
 */
public record Planting(
        @Key(
                value = "The outlines that show the plants: names of such as come with the program, or SVG files.",
                atLeast = 1,
                oneOrMany = true)
        List<Outline> outlines,

        @Key("The region that they stand in, by name.") String region,

        @Key("The name of the floor they stand on; may be left out where there is one floor only.")
        Optional<String> floor,

        @Key(
                value = "How tall they are on average, such as 0.6 m; the outline's own height where left out.",
                min = 0.01,
                max = 100)
        Optional<Metres> height,

        @Key(
                value = "How far a height may differ from that either way, in percent.",
                byDefault = "25",
                min = 0,
                max = 90)
        Percent variation,

        @Key(value = "From plant to plant on the floor, such as 0.4 m.", byDefault = "0.4 m", min = 0.02, max = 1000)
        Metres spacing,

        @Key(value = "Another number gives another scatter.", byDefault = "1", min = 0, max = 999_999)
        int seed,

        @Key(
                value = "The regions that hide them, by name; a depth pass hides what is behind things by itself.",
                oneOrMany = true)
        List<String> behind,

        @Key(value = "What is different about their look; the rest is that of the entourage.", byDefault = "{}")
        OtherLook look) {
    /** Copies the lists. */
    public Planting {
        outlines = List.copyOf(outlines);
        behind = List.copyOf(behind);
    }
}
