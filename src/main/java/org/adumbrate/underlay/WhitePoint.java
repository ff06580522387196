package org.adumbrate.underlay;

import org.adumbrate.raster.Luminance;

/**
 * The light of a pass's lit white, channel by channel; a grey pass has the same in all three.
 *
 * @param red above 0
 * @param green above 0
 * @param blue above 0
 */
public record WhitePoint(double red, double green, double blue) {
    /** White as the file's own coding has it. */
    public static final WhitePoint ONE = new WhitePoint(1, 1, 1);

    /** @throws IllegalArgumentException if a channel is not above 0 */
    public WhitePoint {
        if (!(red > 0 && green > 0 && blue > 0)) {
            throw new IllegalArgumentException("a white must have light in every channel");
        }
    }

    /** The light of one channel, 0 to 2. */
    public double channel(int channel) {
        return channel == 0 ? red : channel == 1 ? green : blue;
    }

    /** Its luminance (Rec. ITU-R BT.709 weights on linear light). */
    public double luminance() {
        return Luminance.RED * red + Luminance.GREEN * green + Luminance.BLUE * blue;
    }
}
