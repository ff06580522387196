package org.adumbrate.sheetfile;

import java.nio.file.Path;
import org.adumbrate.geometry.Srgb;

/**
 * The reference lines of known height.
 *
 * @param lines the vector file that shows them
 * @param color their stroke colour
 * @param height how tall each of them is
 */
public record Heights(
        @Key("The vector file that shows them.") Path lines,

        @Key("Their stroke colour.") Srgb color,

        @Key(value = "How tall each of them is, such as 1.65 m.", min = 0.1, max = 100)
        Metres height) {}
