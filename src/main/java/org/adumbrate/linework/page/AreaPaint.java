package org.adumbrate.linework.page;

import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.LeftOut;

/**
 * How an area is painted.
 *
 * @param kind what it is counted as
 * @param covers whether it hides what was painted before
 * @param since the number of the first stroke that it may hide: of the first in a group that is itself seen through, else 0
 */
public record AreaPaint(LeftOut.Kind kind, boolean covers, int since) {
    /** Levels from here on are the white of paper, which some files write a little darker. */
    private static final int WHITE = 250;

    /** Whether a colour is that of paper. */
    public static boolean isWhite(Srgb color) {
        return Math.min(color.red(), Math.min(color.green(), color.blue())) >= WHITE;
    }

    /** What an area in one colour is counted as. */
    public static LeftOut.Kind kind(boolean white, boolean outlined) {
        if (outlined) {
            return white ? LeftOut.Kind.OUTLINED_WHITE_AREA : LeftOut.Kind.OUTLINED_AREA;
        }
        return white ? LeftOut.Kind.WHITE_AREA : LeftOut.Kind.AREA;
    }
}
