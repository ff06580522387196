package org.adumbrate.underlay;

/** Joins what passes let through, row by row; a grey pass counts for every channel of a canvas in colour. */
final class Transmittance {
    private Transmittance() {}

    /** Takes the darker of the two: both tell of the same light. */
    static void darken(float[] light, int channels, float[] transmittance, int own) {
        if (own == channels) {
            for (int k = 0; k < light.length; k++) {
                light[k] = Math.min(light[k], transmittance[k]);
            }
            return;
        }
        for (int k = 0, t = 0; t < light.length; k++, t += 3) {
            float value = transmittance[k];
            light[t] = Math.min(light[t], value);
            light[t + 1] = Math.min(light[t + 1], value);
            light[t + 2] = Math.min(light[t + 2], value);
        }
    }

    /**
     * As {@link #darken}, but what is in full shadow already stays as it is, noise of its compression included: there the
     * other shadow adds nothing. A little above full shadow this gives way smoothly, and lit places take the darker.
     *
     * @param full what is let through in full shadow
     * @param slack how far above that full shadow may reach
     */
    static void shade(float[] light, int channels, float[] transmittance, int own, float full, float slack) {
        for (int k = 0; k < light.length; k++) {
            float other = transmittance[own == channels ? k : k / channels];
            float before = light[k];
            if (other < before) {
                float above = (before - full) / slack - 1;
                float floor = above <= 0 ? before : full + slack * Math.max(0, 1 - above / 2);
                light[k] = Math.min(before, Math.max(other, floor));
            }
        }
    }

    /** Lets through a share of what is left: they tell of different light. */
    static void multiply(float[] light, int channels, float[] transmittance, int own) {
        if (own == channels) {
            for (int k = 0; k < light.length; k++) {
                light[k] *= transmittance[k];
            }
            return;
        }
        for (int k = 0, t = 0; t < light.length; k++, t += 3) {
            float value = transmittance[k];
            light[t] *= value;
            light[t + 1] *= value;
            light[t + 2] *= value;
        }
    }
}
