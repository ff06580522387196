package org.adumbrate.registration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SymmetricSystemTest {
    @Test
    void solvesASystem() {
        double[] x = SymmetricSystem.solve(new double[][] {{4, 2, 8}, {2, 3, 8}});
        assertThat(x).containsExactly(new double[] {1, 2}, within(1e-12));
    }

    @Test
    void aSingularSystemHasNoSolution() {
        assertThat(SymmetricSystem.solve(new double[][] {{1, 2, 3}, {2, 4, 6}})).isNull();
    }

    @Test
    void theSandwichOfAMatrixWithItselfIsItsInverse() {
        double[][] a = {{4, 2}, {2, 3}};
        double[][] inverse = SymmetricSystem.sandwich(a, a);
        assertThat(inverse[0]).containsExactly(new double[] {0.375, -0.25}, within(1e-12));
        assertThat(inverse[1]).containsExactly(new double[] {-0.25, 0.5}, within(1e-12));
    }
}
