package org.adumbrate.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;

/** The page around the sections: head, title, contents. */
final class Page {
    private final Report report;
    private final Html html;

    Page(Report report, Html html) {
        this.report = report;
        this.html = html;
    }

    void write() throws IOException {
        html.raw("<!DOCTYPE html>\n").open("html", "lang", "en");
        head();
        html.open("body");
        html.element("a", "Skip to the sheet", "class", "skip", "href", "#sheet");
        List<Section> sections = sections();
        title(sections);
        html.open("main");
        for (Section section : sections) {
            section(section);
        }
        html.closeLine();
        html.closeLine();
        html.closeLine();
    }

    private List<Section> sections() {
        return List.of(
                new SheetSection(report),
                new PassesSection(report),
                new PlacementSection(report),
                new PerspectiveSection(report),
                new SunSection(report),
                new PensSection(report),
                new FindingsSection(report),
                new FilesSection(report));
    }

    private void head() throws IOException {
        String script = resource("report.js");
        html.open("head").empty("meta", "charset", "utf-8");
        html.empty("meta", "http-equiv", "Content-Security-Policy", "content", policy(script));
        html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        html.empty("meta", "name", "color-scheme", "content", "light");
        html.element("title", report.title() + " - report of the sheet");
        html.open("style").raw(resource("report.css"));
        html.raw(".drawn { background-image: url(\"")
                .data(report.drawing().png())
                .raw("\"); }\n");
        html.closeLine();
        // it marks the page before the first paint; the rest of it waits for the document
        html.open("script").raw(script).closeLine();
        html.closeLine();
    }

    /** Nothing but what the page holds may be loaded or run (W3C Content Security Policy Level 3). */
    private static String policy(String script) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
            return "default-src 'none'; base-uri 'none'; form-action 'none'; img-src data:;"
                    + " style-src 'unsafe-inline'; script-src 'sha256-"
                    + Base64.getEncoder().encodeToString(hash) + "'";
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every platform has SHA-256", e);
        }
    }

    private void title(List<Section> sections) throws IOException {
        html.open("header").element("p", "Report of the sheet", "class", "over");
        html.element("h1", report.title());
        html.element("p", summary(), "class", "lead");
        html.open("nav", "aria-label", "Sections").open("ol");
        for (Section section : sections) {
            html.open("li")
                    .element("a", section.title(), "href", "#" + section.id())
                    .closeLine();
        }
        html.closeLine().closeLine().closeLine();
    }

    private String summary() {
        long warnings = report.count(Remark.Weight.WARNING);
        long notes = report.count(Remark.Weight.NOTE);
        return Words.sheet(report.sheet()) + ", built at " + Words.number(report.dpi(), 0) + " pixels per inch. "
                + Words.counted(warnings, "warning", "warnings") + " and " + Words.counted(notes, "note", "notes")
                + (warnings > 0 ? "; read the warnings before printing." : ".");
    }

    private void section(Section section) throws IOException {
        html.open("section", "id", section.id(), "aria-labelledby", section.id() + "-title");
        html.element("h2", section.title(), "id", section.id() + "-title");
        section.write(html);
        html.closeLine();
    }

    private static String resource(String name) throws IOException {
        try (InputStream in = Page.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
