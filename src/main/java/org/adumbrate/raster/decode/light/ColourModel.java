package org.adumbrate.raster.decode.light;

/** What the colour channels of a pixel stand for. */
public enum ColourModel {
    /** One channel of brightness. */
    GREY(1, "GRAY"),
    /** Red, green, blue. */
    RGB(3, "RGB "),
    /** Cyan, magenta, yellow, black: full ink is the largest value. */
    CMYK(4, "CMYK");

    private final int channels;
    private final String profileSpace;

    ColourModel(int channels, String profileSpace) {
        this.channels = channels;
        this.profileSpace = profileSpace;
    }

    /** How many channels it has, without alpha. */
    public int channels() {
        return channels;
    }

    /** The device space of a colour profile for it, as such profiles spell it. */
    public String profileSpace() {
        return profileSpace;
    }
}
