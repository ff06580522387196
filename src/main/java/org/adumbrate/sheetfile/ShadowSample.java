package org.adumbrate.sheetfile;

import org.adumbrate.geometry.SheetPoint;

/**
 * An upright on the drawing and its shadow.
 *
 * @param foot where it stands
 * @param head its upper end
 * @param tip where the shadow of the head falls
 */
public record ShadowSample(
        @Key("Where the upright stands: [x, y] in mm.") SheetPoint foot,

        @Key("Its upper end: [x, y] in mm.") SheetPoint head,

        @Key("Where the shadow of its head falls: [x, y] in mm.")
        SheetPoint tip) {}
