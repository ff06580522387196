package org.adumbrate.report.page;

import java.io.IOException;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** The findings, the heaviest first. */
final class FindingsSection implements Section {
    private final Report report;

    FindingsSection(Report report) {
        this.report = report;
    }

    @Override
    public String id() {
        return "findings";
    }

    @Override
    public String title() {
        return "Findings";
    }

    @Override
    public void write(Html html) throws IOException {
        List<Remark> sorted = report.remarks().stream()
                .sorted(Comparator.comparing(Remark::weight))
                .toList();
        if (sorted.isEmpty()) {
            html.element("p", "Nothing was found that should be known before printing.");
            return;
        }
        html.element("p", "Warnings may show in print; notes are good to know.");
        html.open("ul", "class", "findings");
        for (Remark remark : sorted) {
            String word = remark.weight().word();
            html.open("li", "class", word.toLowerCase(Locale.ROOT));
            html.element("strong", word);
            html.element("span", remark.text());
            html.closeLine();
        }
        html.closeLine();
    }
}
