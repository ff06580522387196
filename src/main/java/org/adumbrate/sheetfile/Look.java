package org.adumbrate.sheetfile;

import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.Srgb;

/**
 * How figures, planting and birds are drawn.
 *
 * @param fill the colour of the fill
 * @param opacity how much the fill covers; 0 for no fill
 * @param outline the weight of the outline; 0 draws none
 * @param ink the colour of the outline
 */
public record Look(
        @Key(value = "The colour of the fill.", byDefault = "white")
        Srgb fill,

        @Key(value = "How much the fill covers, in percent; 0 for no fill.", byDefault = "100", min = 0, max = 100)
        Percent opacity,

        @Key(value = "The weight of the outline in mm; 0 draws none.", byDefault = "0.18 mm", min = 0, max = 10)
        Length outline,

        @Key(value = "The colour of the outline.", byDefault = "black")
        Srgb ink) {}
