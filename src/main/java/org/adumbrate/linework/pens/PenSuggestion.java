package org.adumbrate.linework.pens;

import java.util.List;
import java.util.OptionalDouble;
import org.adumbrate.geometry.Srgb;

/**
 * A guess at what a colour depicts.
 *
 * @param colors the colour, and after it shades of it that an exporter may have made
 * @param role what it seems to depict
 * @param reason why it seems so, such as {@code no stroke stands upright}
 */
public record PenSuggestion(List<Srgb> colors, LineRole role, String reason) {
    /** Copies the list. */
    public PenSuggestion {
        colors = List.copyOf(colors);
    }

    /** The shade that is drawn most. */
    public Srgb color() {
        return colors.get(0);
    }

    /** The weight to draw it with in mm; none for lines that are not drawn. */
    public OptionalDouble widthMm() {
        return role.widthMm();
    }
}
