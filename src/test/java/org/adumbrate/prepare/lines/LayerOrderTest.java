package org.adumbrate.prepare.lines;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.drawing.Layer;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.reading.SheetFile;
import org.adumbrate.sheetfile.reading.SheetFileReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LayerOrderTest {
    @TempDir
    private Path folder;

    private SheetFile file;

    @BeforeEach
    void read() throws IOException {
        Files.createFile(folder.resolve("lines.pdf"));
        Files.createFile(folder.resolve("trees.pdf"));
        file = SheetFileReader.read(Files.writeString(folder.resolve("a.sheet.yaml"), """
                lines: lines.pdf
                pens:
                  glazing: { color: "#00aabe" }
                  building: { color: "#404048" }
                veils:
                  trees: { lines: trees.pdf, color: "#00a000" }
                  glass: { lines: lines.pdf, color: "#01abbe" }
                deliver: { preview: preview.png }
                """));
    }

    @Test
    void aVeilLiesUnderThePenThatDrawsItsColour() throws IOException {
        assertThat(LayerOrder.of(file, List.of(Layer.of("lines-123456", List.of())), List.of())
                        .names())
                .startsWith(
                        "underlay",
                        "lines-123456",
                        "glass-fill",
                        "glazing",
                        "building",
                        "profile",
                        "trees-fill",
                        "trees",
                        "entourage");
    }

    @Test
    void everyNameThatCannotBeFollowedIsTold() {
        assertThatThrownBy(() -> LayerOrder.of(
                        file, List.of(), List.of("bulding", "entourage", "entourage", "underlay", "sky over all")))
                .isInstanceOf(SheetFileFault.class)
                .hasMessageContaining("no layer is called 'bulding'; expected underlay, glass-fill")
                .hasMessageContaining("'entourage' is named twice; leave one out")
                .hasMessageContaining("the underlay lies behind all else; leave it out or name it first")
                .hasMessageContaining("no layer is called 'sky over all'; expected underlay, glass-fill, glazing");
    }

    @Test
    void aWishIsFollowed() throws IOException {
        assertThat(LayerOrder.of(file, List.of(), List.of("entourage", "building"))
                        .names())
                .containsSubsequence("entourage", "building", "cut-backing");
    }
}
