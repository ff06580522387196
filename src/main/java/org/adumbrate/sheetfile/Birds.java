package org.adumbrate.sheetfile;

import java.util.List;

/**
 * A flock in the sky.
 *
 * @param outlines what shows the birds, at least one, taken in turn by chance
 * @param region the name of the region that they are seen in
 * @param count how many there are
 * @param wingspan how wide they are
 * @param distance how far from the eye they fly
 * @param seed another number gives another flock
 * @param look what is different about their look
 */
public record Birds(
        @Key(
                value = "The outlines that show the birds: names of such as come with the program, or SVG files.",
                atLeast = 1,
                oneOrMany = true)
        List<Outline> outlines,

        @Key("The region that they are seen in, by name.") String region,

        @Key(value = "How many there are.", byDefault = "7", min = 1, max = 1000)
        int count,

        @Key(value = "How wide they are, such as 0.6 m.", byDefault = "0.6 m", min = 0.01, max = 10)
        Metres wingspan,

        @Key(value = "How far from the eye they fly: [nearest, farthest].", byDefault = "[25 m, 90 m]")
        DistanceRange distance,

        @Key(value = "Another number gives another flock.", byDefault = "1", min = 0, max = 999_999)
        int seed,

        @Key(value = "What is different about their look; the rest is that of the entourage.", byDefault = "{}")
        OtherLook look) {
    /** Copies the list. */
    public Birds {
        outlines = List.copyOf(outlines);
    }
}
