package org.adumbrate.raster.decode;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.adumbrate.fault.InputFault;
import org.adumbrate.raster.DecodingStopped;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.SampleSink;
import org.adumbrate.raster.decode.jpeg.JpegBytes;
import org.adumbrate.raster.decode.png.PngBytes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RasterFilesTest {
    @TempDir
    Path folder;

    @Test
    void whatIsNoFile() throws IOException {
        assertFault(folder.resolve("lost.png"), "lost.png: does not exist; check the name");
        assertFault(folder, "is a folder");
        assertFault(Files.createFile(folder.resolve("nothing.tif")), "is empty; export it again");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "shadow pass of the yard|text",
                "<?xml version='1.0'?><svg width='3'/>|an SVG drawing",
                "<!DOCTYPE html><p>404|a web page",
                "<?xml version='1.0'?><plan/>|an XML file",
                "%PDF-1.7|a PDF",
                "GIF89a|a GIF picture",
                "RIFF1234WEBPVP8|a WebP picture",
                "8BPS|a layered picture"
            })
    void aFileOfAnotherKindUnderARasterName(String content, String words) throws IOException {
        Path file = Files.write(folder.resolve("shadow.tif"), content.getBytes(StandardCharsets.US_ASCII));
        assertFault(file, "shadow.tif: looks like " + words);
    }

    @Test
    void theContentDecidesNotTheName() throws IOException {
        Path file = Files.write(folder.resolve("shadow.png"), JpegBytes.writeGrey(90));
        try (RasterReader reader = RasterFiles.open(file)) {
            assertThat(reader.info().format()).isEqualTo("JPEG");
        }
    }

    @Test
    void aSinkMayStopAndTheReaderMayBeginAgain() throws IOException {
        assertStops(Files.write(folder.resolve("a.jpg"), JpegBytes.writeGrey(90)));
        assertStops(Files.write(folder.resolve("a.png"), png()));
        assertStops(Sample.file("rgb8-strips-lzw.tif"));
        assertStops(Sample.file("rgb8-tiles-deflate.tif"));
        assertStops(Sample.file("float32-grey.tif"));
        assertStops(Sample.file("opencv.hdr"));
    }

    static void assertStops(Path file) throws IOException {
        try (RasterReader reader = RasterFiles.open(file)) {
            int height = reader.info().stored().height();
            int[] rows = {0};
            SampleSink stopping = (x, y, pixels, samples, offset) -> {
                if (y == height / 2) {
                    throw new DecodingStopped();
                }
                rows[0]++;
            };
            assertThatThrownBy(() -> reader.decode(stopping)).isInstanceOf(DecodingStopped.class);
            assertThat(rows[0]).isEqualTo(height / 2);

            SampleSink failing = (x, y, pixels, samples, offset) -> {
                throw new IllegalStateException("not the file's fault");
            };
            assertThatThrownBy(() -> reader.decode(failing))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessage("not the file's fault");

            rows[0] = 0;
            reader.decode((x, y, pixels, samples, offset) -> rows[0]++);
            assertThat(rows[0]).isEqualTo(height);
        }
    }

    private static byte[] png() {
        byte[] rows = PngBytes.rows(Pattern.WIDTH, Pattern.HEIGHT, 8, 1, Pattern::code8, 0);
        return new PngBytes()
                .header(Pattern.WIDTH, Pattern.HEIGHT, 8, 0, 0)
                .data(rows, 1)
                .end();
    }

    private static void assertFault(Path file, String words) {
        assertThatThrownBy(() -> RasterFiles.open(file))
                .isInstanceOf(InputFault.class)
                .hasMessageContaining(words);
    }
}
