package org.adumbrate.sheetfile;

import java.util.Optional;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.Srgb;

/**
 * What is different about the look of an item.
 *
 * @param fill another colour of the fill
 * @param opacity how much the fill covers instead; 0 for no fill
 * @param outline another weight of the outline; 0 draws none
 * @param ink another colour of the outline
 */
@Written(shared = true)
public record OtherLook(
        @Key("The colour of the fill.") Optional<Srgb> fill,

        @Key(value = "How much the fill covers, in percent; 0 for no fill.", min = 0, max = 100)
        Optional<Percent> opacity,

        @Key(value = "The weight of the outline in mm; 0 draws none.", min = 0, max = 10)
        Optional<Length> outline,

        @Key("The colour of the outline.") Optional<Srgb> ink) {
    /** The whole look of the item, with everything that it does not say taken from the common one. */
    public Look over(Look common) {
        return new Look(
                fill.orElse(common.fill()),
                opacity.orElse(common.opacity()),
                outline.orElse(common.outline()),
                ink.orElse(common.ink()));
    }
}
