package org.adumbrate.raster;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.PixelBox;

/** Keeps the light of a window in memory as it comes. */
public final class LightArray implements LightSink {
    private final PixelBox window;
    private final int channels;
    private final float[] light;
    private int next;

    public LightArray(PixelBox window, int channels) {
        this.window = window;
        this.channels = channels;
        this.light = new float[Math.toIntExact(window.size().count() * channels)];
        Arrays.fill(light, Float.NaN);
        this.next = window.top();
    }

    /** All of it, row by row. */
    public float[] light() {
        return light;
    }

    /** What a part of it holds, row by row. */
    public float[] crop(PixelBox part) {
        float[] crop = new float[Math.toIntExact(part.size().count() * channels)];
        int length = part.width() * channels;
        for (int y = 0; y < part.height(); y++) {
            int from = (part.top() + y - window.top()) * window.width() + part.left() - window.left();
            System.arraycopy(light, from * channels, crop, y * length, length);
        }
        return crop;
    }

    private record Rows(int y, List<float[]> rows) implements Strip {}

    @Override
    public Filler filler() {
        return new Filler() {
            private Rows strip;
            private int expected;

            @Override
            public void begin(int y, int rows) {
                strip = new Rows(y, new ArrayList<>());
                expected = rows;
            }

            @Override
            public void row(float[] row) {
                strip.rows.add(row.clone());
            }

            @Override
            public Strip end() {
                if (strip.rows.size() != expected) {
                    throw new AssertionError(strip.rows.size() + " rows instead of " + expected);
                }
                return strip;
            }
        };
    }

    @Override
    public void take(Strip strip) {
        Rows rows = (Rows) strip;
        if (rows.y != next) {
            throw new AssertionError("a strip at row " + rows.y + " instead of " + next);
        }
        int length = window.width() * channels;
        for (float[] row : rows.rows) {
            System.arraycopy(row, 0, light, (next++ - window.top()) * length, length);
        }
    }
}
