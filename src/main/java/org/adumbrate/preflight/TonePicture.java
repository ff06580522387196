package org.adumbrate.preflight;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.raster.LightSink;
import org.adumbrate.raster.Luminance;

/** The underlay as it will be printed, small and in memory. */
final class TonePicture {
    private final SheetSize sheet;
    private final PixelSize size;
    private final int channels;
    private final float[] light;

    private TonePicture(SheetSize sheet, PixelSize size, int channels) {
        this.sheet = sheet;
        this.size = size;
        this.channels = channels;
        this.light = new float[Math.toIntExact(size.count() * channels)];
    }

    /** A picture that is filled by its sink. */
    static TonePicture blank(SheetSize sheet, PixelSize size, int channels) {
        return new TonePicture(sheet, size, channels);
    }

    /** Its size. */
    public PixelSize size() {
        return size;
    }

    /** Its channels: 1 or 3. */
    public int channels() {
        return channels;
    }

    /** The light of one channel of a pixel, 0 to 1. */
    public float at(int x, int y, int channel) {
        return light[(y * size.width() + x) * channels + channel];
    }

    /** The light that paper sends back in a pixel, 0 to 1. */
    public float luminance(int x, int y) {
        return channels == 1 ? at(x, y, 0) : Luminance.of(at(x, y, 0), at(x, y, 1), at(x, y, 2));
    }

    /** The same at a place of the sheet; bare paper off the sheet. */
    public float luminance(SheetPoint point) {
        int x = (int) Math.floor(point.x() / sheet.widthMm() * size.width());
        int y = (int) Math.floor(point.y() / sheet.heightMm() * size.height());
        return x < 0 || y < 0 || x >= size.width() || y >= size.height() ? 1 : luminance(x, y);
    }

    /** The middle of a pixel on the sheet. */
    public SheetPoint middle(int x, int y) {
        return new SheetPoint((x + 0.5) * sheet.widthMm() / size.width(), (y + 0.5) * sheet.heightMm() / size.height());
    }

    /** Takes the strips of a blend. */
    LightSink sink() {
        return new Keeping();
    }

    private record Rows(int y, List<float[]> rows) implements LightSink.Strip {}

    private final class Keeping implements LightSink {
        @Override
        public Filler filler() {
            return new Filler() {
                private Rows strip = new Rows(0, List.of());

                @Override
                public void begin(int y, int rows) {
                    strip = new Rows(y, new ArrayList<>());
                }

                @Override
                public void row(float[] row) {
                    strip.rows().add(row.clone());
                }

                @Override
                public Strip end() {
                    return strip;
                }
            };
        }

        @Override
        public void take(Strip filled) {
            Rows strip = (Rows) filled;
            int width = size.width() * channels;
            for (int k = 0; k < strip.rows().size(); k++) {
                System.arraycopy(strip.rows().get(k), 0, light, (strip.y() + k) * width, width);
            }
        }
    }
}
