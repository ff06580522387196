package org.adumbrate.sheetfile;

import java.util.List;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.Srgb;

/**
 * How the lines of one stroke colour are drawn.
 *
 * @param color the stroke colour, in the line sheets, of the lines that it draws
 * @param width the line weight
 * @param ink the colour that it draws in
 * @param dash lengths of dash, gap, dash, gap ...; empty for an unbroken line
 * @param hidden true where its lines are left out
 */
public record Pen(
        @Key("The stroke colour, in the line sheets, of the lines that it draws.")
        Srgb color,

        @Key(value = "The line weight in mm.", byDefault = "0.25 mm", above = 0, max = 10)
        Length width,

        @Key(value = "The colour that it draws in.", byDefault = "black")
        Srgb ink,

        @Key(
                value = "Lengths in mm of dash, gap, dash, gap ...; an unbroken line where left out.",
                above = 0,
                max = 1000)
        List<Length> dash,

        @Key(value = "True leaves its lines out.", byDefault = "false")
        boolean hidden) {}
