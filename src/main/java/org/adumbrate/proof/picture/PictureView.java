package org.adumbrate.proof.picture;

import org.adumbrate.geometry.PixelBox;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.json.JsonFault;

/**
 * What a page shows of the sheet.
 *
 * @param whole the grid of device pixels that covers the whole sheet at the page's zoom
 * @param window the pixels of it that are on the screen
 */
public record PictureView(PixelSize whole, PixelBox window) {
    /** Of a side; the largest sheet at the closest look. */
    private static final int MOST_SIDE = 1_000_000;

    /** Of the window; more than any screen has. */
    private static final long MOST_PIXELS = 40_000_000;

    /**
     * A view from numbers that a page sent.
     *
     * @param whole width and height
     * @param window left, top, width and height
     * @throws JsonFault if they are none
     */
    public static PictureView of(double[] whole, double[] window) throws JsonFault {
        PictureView view = new PictureView(
                new PixelSize(side("whole", whole[0], 1), side("whole", whole[1], 1)),
                new PixelBox(
                        side("window", window[0], 0),
                        side("window", window[1], 0),
                        side("window", window[2], 1),
                        side("window", window[3], 1)));
        if (!PixelBox.of(view.whole).contains(view.window)) {
            throw new JsonFault("window: expected a part of the whole");
        }
        if (view.window.size().count() > MOST_PIXELS) {
            throw new JsonFault("window: expected at most " + MOST_PIXELS + " pixels");
        }
        return view;
    }

    private static int side(String name, double number, int least) throws JsonFault {
        if (!(number >= least && number <= MOST_SIDE && number == Math.rint(number))) {
            throw new JsonFault(name + ": expected whole numbers from " + least + " to " + MOST_SIDE);
        }
        return (int) number;
    }
}
