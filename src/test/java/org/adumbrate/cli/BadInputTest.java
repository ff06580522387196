package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.encryption.AccessPermission;
import org.apache.pdfbox.pdmodel.encryption.StandardProtectionPolicy;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is wrong with an input or output is told in one line, and what stood at the output's place still does. */
class BadInputTest {
    private static final int REFUSED = 1;
    private static final int USAGE = 2;
    private static final int INPUT_OUTPUT = 3;

    @TempDir
    private Path folder;

    private Path demo;
    private Path output;

    @BeforeEach
    void prepare() throws IOException {
        demo = DemoCopy.kilnYard(folder);
        output = Files.writeString(folder.resolve("underlay.tif"), "yesterday's");
    }

    private Cli merge(Path shadow) {
        return Cli.run(
                "merge",
                "--shadow",
                shadow.toString(),
                "--size",
                "17x11in",
                "--dpi",
                "40",
                "--output",
                output.toString());
    }

    private Cli mergeOn(Path lines) {
        String shadow = demo.resolve("shadow.jpg").toString();
        return Cli.run("merge", lines.toString(), "--shadow", shadow, "--dpi", "40", "--output", output.toString());
    }

    private void assertTold(Cli result, int code, Path file, String what) {
        assertThat(result.code()).as(result.err()).isEqualTo(code);
        assertThat(result.err().trim()).doesNotContain("\n").contains(what);
        assertThat(result.err()).contains(file.getFileName().toString());
        assertThat(output).hasContent("yesterday's");
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    private Path truncated(String name, double share) throws IOException {
        byte[] whole = Files.readAllBytes(demo.resolve(name));
        return Files.write(folder.resolve("short-" + name), Arrays.copyOf(whole, (int) (whole.length * share)));
    }

    @Test
    void aTruncatedJpeg() throws IOException {
        Path file = truncated("shadow.jpg", 0.6);
        assertTold(merge(file), INPUT_OUTPUT, file, "export it again");
    }

    @Test
    void aTruncatedPng() throws IOException {
        Path file = truncated("occlusion.png", 0.5);
        assertTold(merge(file), INPUT_OUTPUT, file, "export it again");
    }

    @Test
    void aPngWithAFalseSize() throws IOException {
        byte[] bytes = Files.readAllBytes(demo.resolve("occlusion.png"));
        bytes[16] = 0x7f;
        Path file = Files.write(folder.resolve("false.png"), bytes);
        assertTold(merge(file), INPUT_OUTPUT, file, "false.png");
    }

    @Test
    void aTextThatSaysItIsATiff() throws IOException {
        Path file = Files.writeString(folder.resolve("notes.tif"), "Remember to export the shadows again.\n");
        assertTold(merge(file), INPUT_OUTPUT, file, "text");
    }

    @Test
    void anEmptyFile() throws IOException {
        Path file = Files.createFile(folder.resolve("empty.png"));
        assertTold(merge(file), INPUT_OUTPUT, file, "empty");
    }

    @Test
    void aMissingFile() {
        Path file = folder.resolve("nowhere.jpg");
        assertTold(merge(file), INPUT_OUTPUT, file, "nowhere.jpg");
    }

    @Test
    void anEncryptedPdf() throws IOException {
        Path file = folder.resolve("locked.pdf");
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            document.protect(new StandardProtectionPolicy("owner", "user", new AccessPermission()));
            document.save(file.toFile());
        }
        assertTold(mergeOn(file), INPUT_OUTPUT, file, "password");
    }

    @Test
    void aPdfWithoutStrokes() throws IOException {
        Path file = folder.resolve("blank.pdf");
        try (PDDocument document = new PDDocument()) {
            document.addPage(new PDPage());
            document.save(file.toFile());
        }
        assertTold(mergeOn(file), INPUT_OUTPUT, file, "shows no line");
    }

    @Test
    void anOutputFolderThatCannotBe() throws IOException {
        Path blocked = Files.writeString(folder.resolve("blocked"), "a file");
        Cli result = Cli.run(
                "merge",
                "--shadow",
                demo.resolve("shadow.jpg").toString(),
                "--size",
                "17x11in",
                "--dpi",
                "40",
                "--output",
                blocked.resolve("underlay.tif").toString());
        assertTold(result, INPUT_OUTPUT, blocked.resolve("underlay.tif"), "cannot be written");
    }

    @Test
    void anOutputThatIsAnInput() throws IOException {
        Path shadow = Files.copy(demo.resolve("occlusion.png"), folder.resolve("pass.png"));
        byte[] before = Files.readAllBytes(shadow);
        Cli result =
                Cli.run("merge", "--shadow", shadow.toString(), "--size", "17x11in", "--output", shadow.toString());
        assertTold(result, REFUSED, shadow, "is one of the inputs");
        assertThat(Files.readAllBytes(shadow)).isEqualTo(before);
    }

    @Test
    void aPassOfAnotherRatioWithoutLines() throws IOException {
        Path shadow = demo.resolve("shadow.jpg");
        Cli result = Cli.run(
                "merge", "--shadow", shadow.toString(), "--size", "A3 landscape", "--output", output.toString());
        assertTold(result, REFUSED, shadow, "ratio");
    }

    @Test
    void anOpacityThatIsNoPercentage() {
        Cli result = Cli.run(
                "merge", "--shadow", "x.jpg", "--size", "17x11in", "--opacity", "shadow=0.6", "--output", "y.tif");
        assertThat(result.code()).isEqualTo(USAGE);
        assertThat(result.err()).contains("did you mean 60?");
    }

    @Test
    void aSheetFileWithTwoMistakesTellsBoth() throws IOException {
        Path sheet = demo.resolve("kiln-yard.sheet.yaml");
        String text = Files.readString(sheet)
                .replace("png, opacity: 45", "png, opacty: 45")
                .replace("shadow.jpg", "shadw.jpg");
        Files.writeString(sheet, text);
        Cli result = Cli.run("build", sheet.toString());
        assertThat(result.code()).isEqualTo(INPUT_OUTPUT);
        assertThat(result.err().trim().split("\n")).hasSize(2);
        assertThat(result.err()).contains("did you mean 'opacity'?").contains("did you mean 'shadow.jpg'?");
    }
}
