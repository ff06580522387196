package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

@Timeout(60)
class WatchLoopTest {
    private static final String SHEET = """
            lines: lines.svg
            pens: { plan: { color: "#000000", width: 0.25 } }
            deliver: { drawing: out/drawing.pdf }
            """;
    private static final String LINES = """
            <svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="80mm" viewBox="0 0 100 80">
              <path d="M10 10H90" fill="none" stroke="#000000" stroke-width="0.2"/>
            </svg>
            """;

    @TempDir
    private Path folder;

    private final StringWriter told = new StringWriter();

    @Test
    void buildsAgainAfterEveryChangeAndOutlivesFaults() throws IOException, InterruptedException {
        Path sheet = Files.writeString(folder.resolve("plan.sheet.yaml"), SHEET);
        Path lines = Files.writeString(folder.resolve("lines.svg"), LINES);
        String[] args = {"build", sheet.toString(), "--watch"};
        Thread program = new Thread(
                () -> Adumbrate.run(args, new PrintWriter(new StringWriter(), true), new PrintWriter(told, true)));
        program.start();
        try {
            awaitTold("made anew: cleaned pens, line sheets, sorted lines; watching");
            Files.writeString(sheet, SHEET.replace("0.25", "0.3"));
            awaitTold("reused: cleaned pens, line sheets, sorted lines; made anew: nothing; watching");
            Files.writeString(lines, LINES.substring(0, 60));
            awaitTold("lines.svg: ");
            Files.writeString(lines, LINES.replace("H90", "H80"));
            awaitTold("reused: nothing; made anew: cleaned pens, line sheets, sorted lines; watching");
            Files.writeString(sheet, SHEET.replace("width", "widht"));
            awaitTold("widht");
            Files.delete(lines);
            Files.writeString(sheet, SHEET);
            awaitTold("no such ");
            Files.writeString(lines, LINES);
            awaitTold("watching");
        } finally {
            program.interrupt();
            program.join(10_000);
        }
        assertThat(program.isAlive()).isFalse();
        assertThat(told.toString()).doesNotContain("defect");
    }

    /** Waits for words and forgets everything up to them. */
    private void awaitTold(String words) throws InterruptedException {
        long end = System.nanoTime() + 10_000_000_000L;
        while (System.nanoTime() < end) {
            synchronized (told.getBuffer()) {
                int at = told.getBuffer().indexOf(words);
                if (at >= 0) {
                    told.getBuffer().delete(0, at + words.length());
                    return;
                }
            }
            Thread.sleep(20);
        }
        assertThat(told.toString()).contains(words);
    }
}
