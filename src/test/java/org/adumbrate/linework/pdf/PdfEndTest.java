package org.adumbrate.linework.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.adumbrate.fault.InputFault;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.read.LineSheets;
import org.adumbrate.linework.read.PdfSketch;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What stands behind the end of a PDF does no harm; an end that is missing is noticed. */
@Timeout(30)
class PdfEndTest {
    @TempDir
    Path folder;

    private byte[] whole;

    @BeforeEach
    void draw() throws IOException {
        try (PdfSketch sketch = new PdfSketch(72, 72)) {
            whole = Files.readAllBytes(sketch.draws("0 0 m 9 9 l S").saved(folder));
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 1023, 4096, 65_530, 65_536, 3_000_000})
    void paddingBehindTheEndIsPassedOver(int zeros) throws IOException {
        assertThat(read(whole, new byte[zeros]).strokes()).hasSize(1);
    }

    @Test
    void otherThingsBehindTheEndArePassedOver() throws IOException {
        byte[] page = "<html><body>Thank you for using our object store</body></html>\r\n"
                .repeat(200)
                .getBytes(StandardCharsets.ISO_8859_1);
        assertThat(read(whole, page).strokes()).hasSize(1);
        byte[] noise = new byte[20_000];
        Arrays.fill(noise, (byte) 0xff);
        assertThat(read(whole, noise).strokes()).hasSize(1);
    }

    @Test
    void anEndMarkThatAloneIsMissingIsDispensable() throws IOException {
        byte[] cut = Arrays.copyOf(whole, whole.length - "%%EOF\n".length());
        assertThat(read(cut, new byte[0]).strokes()).hasSize(1);
    }

    @Test
    void aLaterVersionThatIsCutShortIsNotTakenForTheEarlierOne() throws IOException {
        byte[] begun = "7 0 obj\n<< /Length 99 >> stream\n0 0 m 5 5 l S".getBytes(StandardCharsets.ISO_8859_1);
        assertThatThrownBy(() -> read(whole, begun))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("is cut short");
        assertThatThrownBy(() -> read(whole, begun, new byte[100_000]))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining("is cut short");
    }

    private LineSheet read(byte[]... pieces) throws IOException {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        for (byte[] piece : pieces) {
            all.writeBytes(piece);
        }
        return LineSheets.read(Files.write(folder.resolve("lines.pdf"), all.toByteArray()));
    }
}
