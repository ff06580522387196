package org.adumbrate.raster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** Against the curve itself, which is held to published values elsewhere. */
class SrgbTableTest {
    @Property(tries = 2000, seed = "1")
    void theTablesFollowTheCurve(@ForAll @DoubleRange(max = 1) double value) {
        assertThat(SrgbTable.encode((float) value)).isCloseTo((float) SrgbCurve.encode(value), within(1e-5f));
        assertThat(SrgbTable.decode((float) value)).isCloseTo((float) SrgbCurve.decode(value), within(1e-6f));
        assertThat(SrgbTable.decode(SrgbTable.encode((float) value))).isCloseTo((float) value, within(1e-5f));
    }

    @Test
    void theEndsAreExactAndWhatIsOutsideIsCutOff() {
        assertThat(SrgbTable.encode(1)).isEqualTo(1);
        assertThat(SrgbTable.decode(1)).isEqualTo(1);
        assertThat(SrgbTable.encode(-0.5f)).isZero();
        assertThat(SrgbTable.decode(1.5f)).isEqualTo(1);
    }
}
