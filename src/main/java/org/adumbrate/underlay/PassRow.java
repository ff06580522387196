package org.adumbrate.underlay;

import java.io.IOException;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.raster.Luminance;
import org.adumbrate.raster.Resampler;
import org.adumbrate.raster.SrgbCurve;

/**
 * One pass on its way onto the canvas, row by row: resampled, brought to its white, bent, tinted, and turned into what it
 * lets through, {@code 1 - a + a P} with a its opacity where it lies. For use by one thread.
 */
final class PassRow {
    private final ShownPass pass;
    private final Resampler.Cursor cursor;
    private final boolean isPlain;
    private final int width;
    private final float[] light;
    private final float[] spread;
    private final float[] amount;
    private final PassShares shares;
    private final double darkest;

    /**
     * @param channels channels of the blend, 1 or 3
     * @param darkest light that the pass's 0 stands for: a figure's shadow takes the tone of the building's
     */
    PassRow(ShownPass pass, Canvas canvas, int channels, double darkest) {
        this.pass = pass;
        this.cursor = pass.light().cursor();
        this.width = canvas.window().width();
        this.darkest = darkest;
        int given = pass.light().channels();
        this.light = new float[width * given];
        boolean tinted = pass.look().tint().isPresent();
        int own = tinted ? channels : Math.min(channels, given);
        this.spread = own == given && !tinted ? light : new float[width * own];
        this.isPlain = spread == light
                && darkest == 0
                && pass.look().white().equals(WhitePoint.ONE)
                && pass.look().tone().isStraight();
        this.amount = new float[width];
        this.shares = new PassShares(cursor, pass.look().mask(), canvas);
    }

    void begin(int y, int rows) throws IOException {
        cursor.begin(y, rows);
    }

    /** The channels of {@link #transmittance}: the canvas's, or 1 where all its channels have the same. */
    int channels() {
        return spread.length / width;
    }

    /** What the pass lets through at each pixel of canvas row y, 0 to 1; valid until the next call. */
    float[] transmittance(int y) throws IOException {
        cursor.row(y, light);
        boolean varies = shares.row(y, amount);
        if (!varies && isPlain) {
            fadeWithinLimits((float) pass.look().opacity());
            return light;
        }
        toWhite();
        pass.look().tone().bend(light, light.length);
        if (darkest > 0) {
            lift();
        }
        toCanvasChannels();
        if (varies) {
            fadeByPixel();
        } else {
            fade((float) pass.look().opacity());
        }
        return spread;
    }

    /** The commonest pass has nothing done to it but its opacity: one sweep instead of three. */
    private void fadeWithinLimits(float opacity) {
        float rest = 1 - opacity;
        for (int k = 0; k < light.length; k++) {
            light[k] = rest + opacity * Math.max(0f, Math.min(1f, light[k]));
        }
    }

    /** A white of one changes nothing at all, so that a row with a rim and one without have the same light elsewhere. */
    private void toWhite() {
        int step = light.length / width;
        WhitePoint white = pass.look().white();
        if (step == 1) {
            scale(light, 0, 1, white.equals(WhitePoint.ONE) ? 1 : (float) (1 / white.luminance()));
        } else {
            for (int c = 0; c < 3; c++) {
                scale(light, c, 3, (float) (1 / white.channel(c)));
            }
        }
    }

    private static void scale(float[] values, int from, int step, float factor) {
        for (int k = from; k < values.length; k += step) {
            values[k] = Math.max(0f, Math.min(1f, values[k] * factor));
        }
    }

    private void lift() {
        float floor = (float) darkest;
        for (int k = 0; k < light.length; k++) {
            light[k] = floor + (1 - floor) * light[k];
        }
    }

    private void toCanvasChannels() {
        int step = light.length / width;
        if (pass.look().tint().isPresent()) {
            if (step == 3) {
                Luminance.ofRow(light, light, width);
            }
            tint();
        } else if (step == 3 && channels() == 1) {
            Luminance.ofRow(light, spread, width);
        }
    }

    /** Black becomes the tint and white stays white. */
    private void tint() {
        var tint = pass.look().tint().orElseThrow();
        float r = (float) SrgbCurve.decode(tint.red() / 255.0);
        float g = (float) SrgbCurve.decode(tint.green() / 255.0);
        float b = (float) SrgbCurve.decode(tint.blue() / 255.0);
        if (channels() == 1) {
            float grey = Luminance.RED * r + Luminance.GREEN * g + Luminance.BLUE * b;
            for (int k = 0; k < width; k++) {
                spread[k] = grey + (1 - grey) * light[k];
            }
            return;
        }
        for (int k = 0, t = 0; k < width; k++, t += 3) {
            float value = light[k];
            spread[t] = r + (1 - r) * value;
            spread[t + 1] = g + (1 - g) * value;
            spread[t + 2] = b + (1 - b) * value;
        }
    }

    private void fade(float opacity) {
        float rest = 1 - opacity;
        for (int k = 0; k < spread.length; k++) {
            spread[k] = rest + opacity * spread[k];
        }
    }

    private void fadeByPixel() {
        float opacity = (float) pass.look().opacity();
        for (int k = 0, t = 0; k < width; k++) {
            float a = opacity * amount[k];
            for (int c = 0; c < channels(); c++, t++) {
                spread[t] = 1 - a + a * spread[t];
            }
        }
    }
}
