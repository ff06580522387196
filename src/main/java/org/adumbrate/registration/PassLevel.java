package org.adumbrate.registration;

/**
 * A pass at one resolution.
 *
 * @param image its tone
 * @param inside the part between its bars, in pixels of the image
 * @param noise standard deviation of a pixel where nothing happens, in tone; at least 0.002
 */
record PassLevel(ToneImage image, PixelRect inside, double noise) {
    private static final double LEAST_NOISE = 0.002;

    /** The pass at a fraction of the image's resolution. */
    static PassLevel of(ToneImage image, PixelRect inside, int times) {
        ToneImage reduced = image.reduced(times);
        return new PassLevel(reduced, inside.reduced(times), Math.max(LEAST_NOISE, noise(reduced)));
    }

    /**
     * The median size of a second difference that is blind to slopes and edges along rows and columns (Immerkær, Computer
     * Vision and Image Understanding 64, 300-302, 1996, who takes the mean), which flat areas decide.
     */
    private static double noise(ToneImage image) {
        int[] counts = new int[1024];
        int total = 0;
        int w = image.width;
        float[] v = image.tone;
        for (int y = 1; y < image.height - 1; y += 3) {
            for (int x = 1; x < w - 1; x += 3) {
                int k = y * w + x;
                float mask = v[k - w - 1]
                        - 2 * v[k - w]
                        + v[k - w + 1]
                        - 2 * v[k - 1]
                        + 4 * v[k]
                        - 2 * v[k + 1]
                        + v[k + w - 1]
                        - 2 * v[k + w]
                        + v[k + w + 1];
                counts[(int) Math.min(1023, Math.abs(mask) * 1024)]++;
                total++;
            }
        }
        int below = 0;
        int bin = 0;
        while (bin < 1023 && below + counts[bin] < total / 2) {
            below += counts[bin++];
        }
        // The mask has weight 6 in the root of squares; a normal deviate's median size is 0.6745 deviations.
        return bin / 1024.0 / 6 / 0.6745;
    }
}
