package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sheets of the demo that state one thing wrong: each answer names the figure that is stated and the one that is true. */
class WrongStatementsTest {
    private static final String RIGHT = """
            size: 17 x 11 in
            lines: lines.pdf
            floors: { yard: 0 m, studio: 0.15 m, terrace: 0.75 m, upper: 3.35 m }
            heights: { lines: lines-people-height.pdf, color: "#e60028", height: 1.65 m }
            camera: { focal: 260 mm, principal-point: [214, 150.5], eye-height: 4.25 m }
            figures:
              - { outline: walking, foot: [286.2, 218.7], floor: yard }
              - { outline: strolling, foot: [165, 165.6], floor: upper }
            deliver: { preview: out/preview.png }
            """;
    private static final String DEPTH = "passes: { depth: { file: depth.png, near: 12 m, far: 45 m } }\n";

    @TempDir
    private Path folder;

    private Path demo;

    @BeforeEach
    void copy() throws IOException {
        demo = DemoCopy.kilnYard(folder);
    }

    private Cli run(String command, String sheet) throws IOException {
        Path file = Files.writeString(demo.resolve("a.sheet.yaml"), sheet);
        return Cli.run(command, file.toString());
    }

    @Test
    void nothingIsToldOfWhatIsRight() throws IOException {
        assertThat(run("check", RIGHT + DEPTH).out()).doesNotContain("warning").doesNotContain("error");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    upper: 3.35                | upper: 4.35             | says 4.35 m    | stand at 3.35 m
                    upper: 3.35                | upper: 2.35             | says 2.35 m    | stand at 3.35 m
                    upper: 3.35                | upper: 3.85             | says 3.85 m    | stand at 3.35 m
                    studio: 0.15               | studio: 1.15            | says 1.15 m    | stand at 0.15 m
                    yard: 0 m                  | yard: -1 m              | says -1.00 m   | stand at
                    terrace: 0.75              | terrace: 1.75           | says 1.75 m    | stand at 0.7
                    terrace: 0.75              | terrace: -0.25          | says -0.25 m   | stand at 0.7
                    eye-height: 4.25           | eye-height: 5.25        | says 5.25 m    | say 4.2
                    eye-height: 4.25           | eye-height: 3.75        | says 3.75 m    | say 4.2
                    150.5]                     | 160.5]                  | y 160.5 mm     | at 150.5 mm
                    150.5]                     | 146.5]                  | y 146.5 mm     | at 150.5 mm
                    [214,                      | [234,                   | x 234.0 mm     | x 214.0 mm
                    eye-height                 | turn: 12 deg, eye-height | meet at x 158.7 mm | meet at x 214.0 mm
                    height: 1.65               | height: 1.85            | says 1.85 m    | 1.65 m tall
                    height: 1.65               | height: 1.5             | says 1.50 m    | 1.65 m tall
                    'yard: 0 m, studio: 0.15 m, terrace: 0.75 m, upper: 3.35' | 'yard: 3.35 m, studio: 0.15 m, terrace: 0.75 m, upper: 0' | mm tall, but by | it would be
                    218.7], floor: yard        | 218.7], floor: upper    | mm tall, but by | it would be
                    """)
    void whatIsWrongIsToldWithBothFigures(String right, String wrong, String stated, String told) throws IOException {
        Cli run = run("check", RIGHT.replace(right, wrong));
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains(stated).contains(told);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    far: 45 m   | far: 60 m    | m to far 4
                    near: 12 m  | near: 18 m   | near 1
                    focal: 260  | focal: 325   | at a focal length of 325.0 mm
                    """)
    void aWrongRangeOfDepthIsToldToo(String right, String wrong, String told) throws IOException {
        Cli run = run("check", (RIGHT + DEPTH).replace(right, wrong));
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("m away, but its").contains(told);
    }

    @Test
    void aBuildWithAFloorAMetreOffIsRefused() throws IOException {
        Cli run = run("build", RIGHT.replace("upper: 3.35", "upper: 4.35"));
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err())
                .contains("a.sheet.yaml:3:")
                .contains("floors.upper says 4.35 m")
                .contains("3.35 m");
        assertThat(demo.resolve("out/preview.png")).doesNotExist();
    }
}
