package org.adumbrate.drawing;

import java.io.IOException;
import java.util.List;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.raster.Luminance;
import org.adumbrate.raster.SrgbTable;
import org.adumbrate.raster.encode.PictureFormat;
import org.adumbrate.raster.encode.StripEncoder;

/**
 * The drawing as pixels, at print resolution or for the screen: takes the strips of the underlay, draws the layers over
 * them as the PDF has them, and hands them on to the encoder of a picture. Nothing of the size of the sheet is held, and
 * any division into strips gives the same pixels. What lies half over something else is mixed as it is encoded, not as
 * light: so do the programs that show PDF and SVG.
 */
public final class FlatDrawing implements StripEncoder {
    /** The rows of a strip with which no row of layers is drawn twice. */
    public static final int STRIP_ROWS = Bands.ROWS;

    private final int underlayChannels;
    private final PictureFormat format;
    private final StripEncoder picture;
    private final Bands bands;

    /**
     * @param sheet the size of the sheet
     * @param underlayChannels channels of the strips that will come: 1 or 3
     * @param layers what is drawn over them; those that are not shown are left out
     * @param format the picture's format; where it is grey, colours have their luminance
     * @param picture writes the picture
     */
    public FlatDrawing(
            SheetSize sheet, int underlayChannels, List<Layer> layers, PictureFormat format, StripEncoder picture) {
        this.underlayChannels = underlayChannels;
        this.format = format;
        this.picture = picture;
        this.bands = new Bands(
                sheet, format.size(), layers, color -> format.channels() == 1 ? FlatDrawing.grey(color) : color);
    }

    /** The channels that show an underlay of so many and layers over it truly: 1 if all are grey, else 3. */
    public static int channels(int underlayChannels, List<Layer> layers) {
        boolean grey = layers.stream()
                .filter(Layer::shown)
                .flatMap(layer -> Paint.of(layer).stream())
                .allMatch(paint -> paint.color().equals(grey(paint.color())));
        return grey ? underlayChannels : 3;
    }

    private static Srgb grey(Srgb color) {
        float light = Luminance.of(light(color.red()), light(color.green()), light(color.blue()));
        int level = Math.round(255 * SrgbTable.encode(light));
        return new Srgb(level, level, level);
    }

    private static float light(int level) {
        return SrgbTable.decode(level / 255f);
    }

    @Override
    public Packer packer() {
        return new Flattening(picture.packer());
    }

    @Override
    public void append(Packed strip) throws IOException {
        picture.append(strip);
    }

    @Override
    public long finish() throws IOException {
        return picture.finish();
    }

    @Override
    public void close() throws IOException {
        picture.close();
    }

    private final class Flattening implements Packer {
        private final Packer packer;
        private final Bands.Band band = bands.band();
        private final int width = format.size().width();
        private final float[] row = new float[width * format.channels()];
        private int y;

        Flattening(Packer packer) {
            this.packer = packer;
        }

        @Override
        public void begin(int firstRow, int rows) {
            y = firstRow;
            packer.begin(firstRow, rows);
        }

        @Override
        public void row(float[] light) {
            underlay(light);
            if (band.turnTo(y)) {
                if (format.channels() == 1) {
                    overGrey(band.pixels(), band.start(y));
                } else {
                    overColor(band.pixels(), band.start(y));
                }
            }
            packer.row(row);
            y++;
        }

        private void underlay(float[] light) {
            if (underlayChannels == format.channels()) {
                System.arraycopy(light, 0, row, 0, row.length);
            } else if (format.channels() == 1) {
                Luminance.ofRow(light, row, width);
            } else {
                for (int k = 0; k < row.length; k++) {
                    row[k] = light[k / 3];
                }
            }
        }

        private void overGrey(int[] pixels, int start) {
            for (int x = 0; x < width; x++) {
                int pixel = pixels[start + x];
                if (pixel != 0) {
                    row[x] = over(pixel & 0xff, pixel >>> 24, row[x]);
                }
            }
        }

        private void overColor(int[] pixels, int start) {
            for (int x = 0, k = 0; x < width; x++, k += 3) {
                int pixel = pixels[start + x];
                if (pixel != 0) {
                    int alpha = pixel >>> 24;
                    row[k] = over(pixel >> 16 & 0xff, alpha, row[k]);
                    row[k + 1] = over(pixel >> 8 & 0xff, alpha, row[k + 1]);
                    row[k + 2] = over(pixel & 0xff, alpha, row[k + 2]);
                }
            }
        }

        @Override
        public Packed pack() {
            return packer.pack();
        }
    }

    /** Source over of an encoded level that is multiplied by its alpha; gives linear light. */
    private static float over(int level, int alpha, float light) {
        return SrgbTable.decode((level + (255 - alpha) * SrgbTable.encode(light)) / 255);
    }
}
