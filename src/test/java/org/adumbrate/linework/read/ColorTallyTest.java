package org.adumbrate.linework.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.sort.ColorTally;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ColorTallyTest {
    @TempDir
    Path folder;

    @Test
    void coloursAreTalliedByVisibleLengthTheLongestFirst() throws IOException {
        LineSheet sheet = SvgSketch.read(
                folder,
                "width='100mm' height='50mm' viewBox='0 0 100 50'",
                "<path d='M10 10h10' stroke='#00f'/><path d='M10 10h30v10' stroke='#f00'/>"
                        + "<path d='M90 20h100' stroke='#00f'/><path d='M10 10h20' stroke='#0f0'/>"
                        + "<path d='M200 20h100' stroke='#00f'/>");
        assertThat(ColorTally.of(sheet))
                .containsExactly(
                        new ColorTally(new Srgb(255, 0, 0), 1, 40),
                        new ColorTally(new Srgb(0, 0, 255), 2, 20),
                        new ColorTally(new Srgb(0, 255, 0), 1, 20));
    }
}
