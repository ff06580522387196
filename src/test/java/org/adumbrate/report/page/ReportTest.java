package org.adumbrate.report.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.adumbrate.fault.OutputFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReportTest {
    private static final Pattern TAG =
            Pattern.compile("<(/?)([a-zA-Z0-9]+)((?:\\s+[a-z:A-Z0-9-]+=\"[^\"]*\")*)\\s*(/?)>");
    private static final Pattern ID = Pattern.compile("\\sid=\"([^\"]*)\"");

    @TempDir
    private Path folder;

    private final Reports reports = new Reports();

    private String page(Report report) throws IOException {
        Path file = folder.resolve("report.html");
        long bytes = report.write(file);
        assertThat(bytes).isEqualTo(Files.size(file));
        return Files.readString(file);
    }

    private static List<String> all(String html, String pattern) {
        List<String> found = new ArrayList<>();
        Matcher matcher = Pattern.compile(pattern).matcher(html);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    @Test
    void asksTheNetworkForNothing() throws IOException {
        String html = page(reports.full());
        assertThat(html).doesNotContain("http://", "https://", "<link", "@import", "<iframe", "<object");
        assertThat(all(html, "\\ssrc=\"([^\"]{0,22})")).isNotEmpty().containsOnly("data:image/png;base64,");
        assertThat(all(html, "url\\(\"?(.{0,22})")).isNotEmpty().containsOnly("data:image/png;base64,");
        assertThat(all(html, "href=\"(.)")).containsOnly("#");
        assertThat(html).contains("default-src 'none'");
    }

    @Test
    void onlyItsOwnScriptMayRun() throws IOException, NoSuchAlgorithmException {
        String html = page(reports.full());
        List<String> scripts = all(html, "(?s)<script>(.*?)</script>");
        assertThat(scripts).hasSize(1);
        byte[] hash = MessageDigest.getInstance("SHA-256").digest(scripts.get(0).getBytes(StandardCharsets.UTF_8));
        assertThat(html).contains("script-src 'sha256-" + Base64.getEncoder().encodeToString(hash) + "'");
        assertThat(all(html, "\\s(on[a-z]+)=\"")).isEmpty();
    }

    @Test
    void hasEverySectionInOrder() throws IOException {
        assertThat(all(page(reports.full()), "<h2[^>]*>([^<]*)</h2>"))
                .containsExactly(
                        "The sheet",
                        "Passes under the lines",
                        "Placement",
                        "Perspective",
                        "Sun and shadow",
                        "Pens",
                        "Findings",
                        "Files");
    }

    @Test
    void isWholeWhereNothingIsKnown() throws IOException {
        String html = page(reports.bare());
        assertThat(all(html, "<h2[^>]*>([^<]*)</h2>")).hasSize(8);
        assertThat(html)
                .contains("no passes", "No pass had to be placed", "Nothing is known of the camera", "No sun is known")
                .contains("Nothing was found", "Nothing but this report was written")
                .doesNotContain("NaN", "Infinity", "null");
        wellFormed(html);
    }

    @Test
    void isWellFormedAndItsReferencesLead() throws IOException {
        String html = page(reports.full());
        wellFormed(html);
        List<String> ids = all(html, ID.pattern());
        assertThat(ids).doesNotHaveDuplicates();
        assertThat(ids)
                .containsAll(all(html, "href=\"#([^\"]*)\""))
                .containsAll(all(html, "\\sfor=\"([^\"]*)\""))
                .containsAll(all(html, "aria-labelledby=\"([^\"]*)\""));
        assertThat(all(html, "<(img)")).hasSameSizeAs(all(html, "<img[^>]* alt=\"([^\"]+)\""));
    }

    /** Every element is closed in order; void ones excepted (HTML Living Standard, 13.1.2). */
    private static void wellFormed(String html) {
        Deque<String> open = new ArrayDeque<>();
        String body = html.replaceAll("(?s)<(style|script)>.*?</\\1>", "");
        Matcher tags = TAG.matcher(body);
        int brackets = 0;
        while (tags.find()) {
            brackets++;
            if (!tags.group(1).isEmpty()) {
                assertThat(open.pop()).isEqualTo(tags.group(2));
            } else if (tags.group(4).isEmpty()
                    && !Set.of("meta", "img", "input").contains(tags.group(2))) {
                open.push(tags.group(2));
            }
        }
        assertThat(open).isEmpty();
        // no bracket but those of tags and of the doctype
        assertThat(body.chars().filter(c -> c == '<').count()).isEqualTo(brackets + 1);
        assertThat(body.chars().filter(c -> c == '>').count()).isEqualTo(brackets + 1);
    }

    @Test
    void textIsText() throws IOException {
        String html = page(reports.full());
        assertThat(html).doesNotContain(Reports.HOSTILE).contains("&lt;b onclick=&quot;x()&quot;&gt;R&amp;D&lt;/b&gt;");
    }

    @Test
    void equalReportsGiveEqualBytes() throws IOException {
        assertThat(page(reports.full())).isEqualTo(page(new Reports().full()));
    }

    @Test
    void warningsComeFirst() throws IOException {
        assertThat(all(page(reports.full()), "<strong>([^<]*)</strong>")).containsExactly("Warning", "Note", "Note");
        assertThat(page(reports.full())).contains("1 warning and 2 notes; read the warnings before printing.");
    }

    @Test
    void aSliderBelongsToEachPass() throws IOException {
        String html = page(reports.full());
        assertThat(all(html, "<input type=\"range\" id=\"([^\"]*)\"")).containsExactly("lines-over-1", "lines-over-2");
        assertThat(all(html, "<label for=\"([^\"]*)\"")).containsExactly("lines-over-1", "lines-over-2");
    }

    @Test
    void pensAreDrawnAtTrueWeight() throws IOException {
        assertThat(page(reports.full()))
                .contains("<svg width=\"30mm\" height=\"9mm\" viewBox=\"0 0 30 9\" aria-hidden=\"true\">")
                .contains("stroke-width=\".35\"");
    }

    @Test
    void strayHeightLinesAreMarkedAndNamed() throws IOException {
        String html = page(reports.full());
        assertThat(all(html, "<text[^>]*>(stray [^<]*)</text>")).containsExactly("stray A");
        assertThat(html).contains("Crossed out: 1 line that fit");
    }

    @Test
    void aReportThatFailsLeavesWhatStood() throws IOException {
        Path file = folder.resolve("report.html");
        Files.writeString(file, "before");
        assertThatThrownBy(() -> reports.failing().write(file)).hasMessage("gone");
        assertThat(file).hasContent("before");
        assertThatThrownBy(() -> reports.bare().write(folder)).isInstanceOf(OutputFault.class);
    }
}
