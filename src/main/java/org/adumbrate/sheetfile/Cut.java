package org.adumbrate.sheetfile;

import java.util.Optional;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.Srgb;

/**
 * How the region sliced by the section plane is drawn.
 *
 * @param color the stroke colour of its outline in the line sheets
 * @param outline the weight of its outline; 0 draws none
 * @param backing what lies under the hatch
 * @param hatch its hatch
 */
public record Cut(
        @Key("The stroke colour of its outline in the line sheets.")
        Srgb color,

        @Key(value = "The weight of its outline in mm; 0 draws none.", byDefault = "0.7 mm", min = 0, max = 10)
        Length outline,

        @Key(value = "The fill under the hatch.", byDefault = "white")
        Srgb backing,

        @Key("The hatch; none where left out.") Optional<Hatch> hatch) {}
