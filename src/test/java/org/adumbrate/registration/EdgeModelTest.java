package org.adumbrate.registration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Profiles made by averaging a known function over each pixel (and the pixels' interpolation), finely summed. */
class EdgeModelTest {
    private static final EdgeModel SOLID = new EdgeModel(0.6, EdgeModel.Shape.STEP, EdgeModel.Shape.KINK);
    private static final EdgeModel CREASE = new EdgeModel(0.6, EdgeModel.Shape.KINK);
    private static final EdgeModel DRAWN = new EdgeModel(0.6, EdgeModel.Shape.KINK, EdgeModel.Shape.LINE);

    private static final int GRIDS = 8;

    @ParameterizedTest
    @ValueSource(doubles = {-1.7, -0.5, -0.21, 0, 0.13, 0.5, 1.9})
    void aStepIsFound(double at) {
        assertThat(found(SOLID, t -> t < at ? 0.3 : 0.8)).isCloseTo(at, within(0.06));
    }

    /** The darkest pixel of such a valley lies well to one side; the faces meet where the slopes change. */
    @ParameterizedTest
    @ValueSource(doubles = {-0.9, -0.33, 0.2, 1.1})
    void aLopsidedValleyIsFoundWhereItsSlopesMeet(double at) {
        assertThat(found(CREASE, t -> t < at ? 0.4 + 0.02 * (at - t) : 0.4 + 0.11 * (t - at)))
                .isCloseTo(at, within(0.06));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1.2, -0.4, 0.25, 1})
    void aSilhouetteBesideASlopeIsFoundAtTheStep(double at) {
        assertThat(found(SOLID, t -> t < at ? 0.9 : 0.3 + 0.05 * (t - at))).isCloseTo(at, within(0.03));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1.2, -0.4, 0.25, 1})
    void aDrawnLineIsFoundInItsMiddle(double at) {
        assertThat(found(DRAWN, t -> Math.abs(t - at) < 0.5 ? 0.1 : 0.9)).isCloseTo(at, within(0.03));
    }

    /**
     * No unbiased estimate of a known shape's position scatters less than the Cramér-Rao bound, sigma / sqrt(sum of squared
     * slopes); one that does not know height, level and slope comes near it.
     */
    @Test
    void theScatterOfAStepIsNearItsBoundAndReportedHonestly() {
        EdgeModel model = new EdgeModel(0.6, EdgeModel.Shape.STEP);
        double noise = 0.02;
        double[] clean = profile(t -> t < 0.2 ? 0.3 : 0.7);
        double slopes = 0;
        double[] moved = profile(t -> t < 0.21 ? 0.3 : 0.7);
        for (int k = 0; k < clean.length; k++) {
            slopes += Math.pow((moved[k] - clean[k]) / 0.01, 2);
        }
        double bound = noise / Math.sqrt(slopes);
        Random random = new Random(7);
        EdgeModel.Edge edge = new EdgeModel.Edge();
        double squares = 0;
        double reported = 0;
        int trials = 4000;
        for (int n = 0; n < trials; n++) {
            double[] noisy = clean.clone();
            for (int k = 0; k < noisy.length; k++) {
                noisy[k] += noise * random.nextGaussian();
            }
            model.fit(noisy, noise, edge);
            squares += Math.pow(edge.offset - 0.2, 2);
            reported += edge.sigma / trials;
        }
        double scatter = Math.sqrt(squares / trials);
        assertThat(scatter).isBetween(0.95 * bound, 2 * bound);
        assertThat(reported).isBetween(0.7 * scatter, 1.5 * scatter);
    }

    private static double found(EdgeModel model, DoubleUnaryOperator picture) {
        EdgeModel.Edge edge = new EdgeModel.Edge();
        model.fit(profile(picture), 0.002, edge);
        assertThat(edge.explained).isGreaterThan(0.9);
        return edge.offset;
    }

    /**
     * Pixel means, read by linear interpolation between pixel centres, as the mean over all positions of the pixel grid: what profiles
     * beside each other along a slanted line give.
     */
    private static double[] profile(DoubleUnaryOperator picture) {
        double[] values = new double[EdgeModel.SAMPLES];
        for (int k = 0; k < values.length; k++) {
            for (int n = 0; n < GRIDS; n++) {
                double shift = (double) n / GRIDS;
                double t = EdgeModel.position(k) + shift;
                double base = Math.floor(t);
                double share = t - base;
                values[k] +=
                        ((1 - share) * mean(picture, base - shift) + share * mean(picture, base + 1 - shift)) / GRIDS;
            }
        }
        return values;
    }

    private static double mean(DoubleUnaryOperator picture, double centre) {
        double sum = 0;
        for (int n = 0; n < 200; n++) {
            sum += picture.applyAsDouble(centre - 0.5 + (n + 0.5) / 200);
        }
        return sum / 200;
    }
}
