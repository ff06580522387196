package org.adumbrate.sheetfile;

import org.adumbrate.geometry.Length;

/**
 * What is tidied in the lines before they are drawn; each length is 0 where its part is switched off, all of them where the
 * whole is.
 *
 * @param on false where nothing is to be tidied
 * @param duplicates lines that lie within this of another are merged with it
 * @param join ends of pieces of one straight line are joined where they lie closer together than this
 * @param shortest pieces that touch no other are left out where they are shorter than this
 * @param clutter lines are thinned out where they run closer together than this
 */
@Written(orFirstAlone = true)
public record CleanUpLimits(
        @Key(value = "False leaves the lines as they are.", byDefault = "true")
        boolean on,

        @Key(
                value = "Lines that lie within this of another are merged with it, in mm; 0 merges none.",
                byDefault = "0.05 mm",
                min = 0,
                max = 5)
        Length duplicates,

        @Key(
                value = "Pieces of one straight line whose ends lie closer than this are joined, in mm; 0 joins none.",
                byDefault = "0.1 mm",
                min = 0,
                max = 5)
        Length join,

        @Key(
                value = "Loose pieces shorter than this are left out, in mm; 0 leaves none out.",
                byDefault = "0.2 mm",
                min = 0,
                max = 5)
        Length shortest,

        @Key(
                value = "Lines that run closer together than this are thinned out, in mm; 0 thins none.",
                byDefault = "0.1 mm",
                min = 0,
                max = 5)
        Length clutter) {
    private static final Length OFF = Length.ofMillimetres(0);

    /** Where the whole is switched off, so is each part. */
    public CleanUpLimits {
        duplicates = on ? duplicates : OFF;
        join = on ? join : OFF;
        shortest = on ? shortest : OFF;
        clutter = on ? clutter : OFF;
    }
}
