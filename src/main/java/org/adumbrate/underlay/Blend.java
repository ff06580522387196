package org.adumbrate.underlay;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.adumbrate.geometry.Canvas;

/**
 * All printed passes over bare paper, in linear light.
 *
 * <p>A pass with opacity a multiplies what is under it by {@code 1 - a + a P} (W3C Compositing and Blending Level 1,
 * multiply over an opaque backdrop). Direct light is counted once: the building's and the figures' shadows both say how
 * much of the sun arrives, so of the two the darker counts, after the figures' has been given the building's tone; what
 * stands in the building's shadow casts none. Occlusion then multiplies.
 */
public final class Blend {
    private final Canvas canvas;
    private final int channels;
    /** Renders of a shadow are compressed: around its edges its tone strays by this much of the light, five levels of 255. */
    private static final double SLACK = 0.02;

    private final List<ShownPass> passes;
    private final double shadowTone;
    private final double buildingOpacity;

    /**
     * Prepares a blend.
     *
     * @param canvas what is computed
     * @param passes what is blended, in any order; each lies on the same canvas
     * @param channels 1 for a grey canvas, 3 for colour
     * @param shadowTone the light of the building's full shadow, as a share of its white: what the figures' shadow takes
     *     for its own darkest, 0 to leave it as it is
     */
    public Blend(Canvas canvas, List<ShownPass> passes, int channels, double shadowTone) {
        this.canvas = canvas;
        this.channels = channels;
        this.shadowTone = shadowTone;
        this.buildingOpacity = passes.stream()
                .filter(pass -> pass.role() == PassRole.SHADOW)
                .mapToDouble(pass -> pass.look().opacity())
                .max()
                .orElse(0);
        this.passes = List.copyOf(passes);
    }

    /** The canvas. */
    public Canvas canvas() {
        return canvas;
    }

    /** Its channels. */
    public int channels() {
        return channels;
    }

    /** Promises that no canvas row above this one will be asked for again. */
    public void releaseAbove(int y) {
        for (ShownPass pass : passes) {
            pass.light().releaseAbove(y);
        }
    }

    /** A blender for use by one thread. */
    public Blender blender() {
        return new Blender();
    }

    /** Computes rows of the canvas. */
    public final class Blender {
        private final List<PassRow> direct = new ArrayList<>();
        private final List<PassRow> figures = new ArrayList<>();
        private final List<PassRow> ambient = new ArrayList<>();
        private final float[] light = new float[canvas.window().width() * channels];

        private Blender() {
            for (ShownPass pass : passes) {
                double darkest = pass.role() == PassRole.FIGURE_SHADOW ? shadowTone : 0;
                PassRow row = new PassRow(pass, canvas, channels, darkest);
                switch (pass.role()) {
                    case SHADOW -> direct.add(row);
                    case FIGURE_SHADOW -> figures.add(row);
                    case OCCLUSION -> ambient.add(row);
                }
            }
        }

        /** Turns to a strip. */
        public void begin(int y, int rows) throws IOException {
            for (PassRow row : direct) {
                row.begin(y, rows);
            }
            for (PassRow row : figures) {
                row.begin(y, rows);
            }
            for (PassRow row : ambient) {
                row.begin(y, rows);
            }
        }

        /** The light of canvas row y: {@code width · channels} values with the window's width, 0 to 1, valid until the next call. */
        public float[] row(int y) throws IOException {
            Arrays.fill(light, 1);
            for (PassRow row : direct) {
                Transmittance.darken(light, channels, row.transmittance(y), row.channels());
            }
            for (PassRow row : figures) {
                shade(row.transmittance(y), row.channels());
            }
            for (PassRow row : ambient) {
                Transmittance.multiply(light, channels, row.transmittance(y), row.channels());
            }
            return light;
        }

        private void shade(float[] transmittance, int own) {
            if (shadowTone > 0 && buildingOpacity > 0) {
                float full = (float) (1 - buildingOpacity + buildingOpacity * shadowTone);
                Transmittance.shade(light, channels, transmittance, own, full, (float) (buildingOpacity * SLACK));
            } else {
                Transmittance.darken(light, channels, transmittance, own);
            }
        }
    }
}
