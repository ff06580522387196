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
 * @param gap openings in its outline that are closed, up to this width
 * @param thinnest parts thinner than this, such as panes, are drawn as thick
 */
public record Cut(
        @Key("The stroke colour of its outline in the line sheets.")
        Srgb color,

        @Key(value = "The weight of its outline in mm; 0 draws none.", byDefault = "0.7 mm", min = 0, max = 10)
        Length outline,

        @Key(value = "The fill under the hatch; black without a hatch fills it solid.", byDefault = "white")
        Srgb backing,

        @Key("The hatch; none where left out.") Optional<Hatch> hatch,

        @Key(value = "The widest opening in its outline that is closed, in mm.", byDefault = "1 mm", min = 0, max = 100)
        Length gap,

        @Key(
                value = "Thinner parts, such as panes, are drawn as thick as this, in mm.",
                byDefault = "0.35 mm",
                min = 0,
                max = 10)
        Length thinnest) {}
