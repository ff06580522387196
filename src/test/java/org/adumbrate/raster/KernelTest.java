package org.adumbrate.raster;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Mitchell and Netravali (SIGGRAPH 1988), equation 8, against values worked out elsewhere in double precision. */
class KernelTest {
    @Test
    void kernelsHaveThePublishedValues() throws IOException {
        List<String> rows;
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(getClass().getResourceAsStream("/org/adumbrate/checkvalues/kernels.csv")),
                StandardCharsets.UTF_8))) {
            rows = reader.lines().toList();
        }
        List<String> names = List.of(rows.get(0).split(","));
        int mitchell = names.indexOf("mitchell_1_3");
        int catmullRom = names.indexOf("catmull_rom");
        assertThat(rows).hasSizeGreaterThan(40);
        for (String row : rows.subList(1, rows.size())) {
            String[] cells = row.split(",");
            double x = Double.parseDouble(cells[0]);
            assertThat(CubicKernel.MITCHELL.weight(x)).isCloseTo(Double.parseDouble(cells[mitchell]), within(1e-9));
            assertThat(CubicKernel.CATMULL_ROM.weight(-x))
                    .isCloseTo(Double.parseDouble(cells[catmullRom]), within(1e-9));
        }
    }

    @Test
    void catmullRomAddsUpToOneAtEveryPhase() {
        for (double phase = 0; phase < 1; phase += 0.01) {
            double sum = 0;
            for (int k = -2; k <= 2; k++) {
                sum += CubicKernel.CATMULL_ROM.weight(phase + k);
            }
            assertThat(sum).isCloseTo(1, within(1e-12));
        }
    }
}
