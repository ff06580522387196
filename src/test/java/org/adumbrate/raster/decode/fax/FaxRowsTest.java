package org.adumbrate.raster.decode.fax;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Code words written out of ITU-T T.4 and T.6; whole pictures packed by another library are among the samples. */
class FaxRowsTest {
    private static final String END_OF_LINE = "000000000001";

    private static List<String> unpacked(FaxScheme scheme, int width, int rows, String bits) throws IOException {
        String plain = bits.replace(" ", "");
        byte[] bytes = new byte[(plain.length() + 7) / 8];
        for (int i = 0; i < plain.length(); i++) {
            bytes[i / 8] |= (byte) ((plain.charAt(i) - '0') << (7 - i % 8));
        }
        FaxRows fax = new FaxRows(scheme, width);
        fax.begin(new FaxBits(new ByteArrayInputStream(bytes), bytes.length, false));
        List<String> all = new ArrayList<>();
        byte[] packed = new byte[(width + 7) / 8];
        for (int y = 0; y < rows; y++) {
            fax.next(packed);
            StringBuilder row = new StringBuilder();
            for (int x = 0; x < width; x++) {
                row.append(packed[x / 8] >> (7 - x % 8) & 1);
            }
            all.add(row.toString());
        }
        return all;
    }

    /** White; runs of 3 and 2; a change right by one, then straight below; right by 3, left by 3; nothing of it; from the left. */
    @Test
    void twoDimensions() throws IOException {
        String rows = "1 | 001 1000 11 1 | 011 1 1 | 0000011 0000010 1 | 0001 1 | 001 00110101 011 1";
        assertThat(unpacked(FaxScheme.T6, 12, 6, rows.replace("|", "")))
                .containsExactly(
                        "000000000000", "000110000000", "000010000000", "000000011000", "000000000000", "111100000000");
    }

    @Test
    void endsOfLinesWithFillAndTags() throws IOException {
        String one = END_OF_LINE + "1 0111 11 1011";
        String two = "0000" + END_OF_LINE + "0 011 1 1";
        assertThat(unpacked(FaxScheme.T4_TWO, 8, 2, one + two)).containsExactly("00110000", "00010000");
        String plain = END_OF_LINE + "0111 11 1011" + "000" + END_OF_LINE + "10011";
        assertThat(unpacked(FaxScheme.T4_ONE, 8, 2, plain)).containsExactly("00110000", "00000000");
        assertThat(unpacked(FaxScheme.HUFFMAN, 8, 2, "0111 11 1011 000000 10011"))
                .containsExactly("00110000", "00000000");
    }

    /** Some writers leave out the first; where all are missing it is another packing, which would come out slanted. */
    @Test
    void onlyTheFirstEndOfLineMayBeMissing() throws IOException {
        assertThat(unpacked(FaxScheme.T4_ONE, 8, 2, "0111 11 1011" + END_OF_LINE + "10011"))
                .containsExactly("00110000", "00000000");
        assertThatThrownBy(() -> unpacked(FaxScheme.T4_ONE, 8, 2, "0111 11 1011 10011"))
                .isInstanceOf(FaxRows.DamagedRow.class)
                .hasMessageContaining("no end of line");
    }

    /** 2560 and 2560 and 40 of white, 64 and 0 of black. */
    @Test
    void longRuns() throws IOException {
        String row = unpacked(FaxScheme.HUFFMAN, 5224, 1, "000000011111 000000011111 00101001 0000001111 0000110111")
                .get(0);
        assertThat(row).isEqualTo("0".repeat(5160) + "1".repeat(64));
    }

    @ParameterizedTest
    @CsvSource({
        "T6, 001 1000 00000000 0, a run has no length",
        "T6, 001 10100 11, it leads out of its width",
        "T6, 0000001111, it holds no code",
        "HUFFMAN, 0111 11, no length"
    })
    void aRowThatDoesNotAddUpIsDamaged(FaxScheme scheme, String bits, String why) {
        assertThatThrownBy(() -> unpacked(scheme, 8, 1, bits))
                .isInstanceOf(FaxRows.DamagedRow.class)
                .hasMessageContaining(why);
    }
}
