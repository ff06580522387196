package org.adumbrate.sheetfile;

import java.util.List;

/**
 * Where on the sheet a pass shows.
 *
 * @param inside it shows only inside these; everywhere where empty
 * @param outside it does not show inside these
 */
@Written(atLeast = 1, shared = true)
public record Mask(
        @Key(value = "Polygons in mm: it shows only inside.", oneOrMany = true)
        List<Polygon> inside,

        @Key(value = "Polygons in mm: it shows only outside.", oneOrMany = true)
        List<Polygon> outside) {}
