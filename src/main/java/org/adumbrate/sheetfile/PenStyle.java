package org.adumbrate.sheetfile;

import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.Srgb;

/**
 * How the lines of one stroke colour are drawn.
 *
 * @param color the stroke colour, in the line sheets, of the lines that it draws
 * @param width the line weight, where stated; {@link #weight()} says which holds
 * @param ink the colour that it draws in
 * @param dash lengths of dash, gap, dash, gap ...; empty for an unbroken line
 * @param hidden true where its lines are left out
 * @param role what its lines depict
 * @param cap how its lines end
 * @param join how the pieces of its lines meet
 * @param fades the width of the farthest of all lines that fade as a share of the whole, which the nearest have; the width is the
 *     same everywhere where left out
 */
public record PenStyle(
        @Key("The stroke colour, in the line sheets, of the lines that it draws.")
        Srgb color,

        @Key(value = "The line weight in mm; that of its role where left out.", above = 0, max = 10)
        Optional<Length> width,

        @Key(value = "The colour that it draws in.", byDefault = "black")
        Srgb ink,

        @Key(
                value = "Lengths in mm of dash, gap, dash, gap ...; an unbroken line where left out.",
                above = 0,
                max = 1000)
        List<Length> dash,

        @Key(value = "True leaves its lines out.", byDefault = "false")
        boolean hidden,

        @Key(value = "What its lines depict, which gives its width where none is stated.", byDefault = "other")
        PenRole role,

        @Key(value = "How its lines end.", byDefault = "round")
        PenCap cap,

        @Key(value = "How the pieces of its lines meet.", byDefault = "round")
        LineJoin join,

        @Key(
                value =
                        "The width of the farthest of all lines that fade, in percent of the whole, which the nearest have; the"
                                + " same everywhere where left out.",
                above = 0,
                max = 100)
        Optional<Percent> fades) {
    /** The line weight that holds: the stated one, or that of the role. */
    public Length weight() {
        return width.orElse(role.width());
    }
}
