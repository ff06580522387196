package org.adumbrate.raster.decode;

/** What the colour channels of a pixel stand for. */
enum ColourModel {
    /** One channel of brightness. */
    GREY(1),
    /** Red, green, blue. */
    RGB(3),
    /** Cyan, magenta, yellow, black: full ink is the largest value. */
    CMYK(4);

    private final int channels;

    ColourModel(int channels) {
        this.channels = channels;
    }

    /** How many channels it has, without alpha. */
    int channels() {
        return channels;
    }
}
