package org.adumbrate.report.page;

import java.io.IOException;

/** The files that were written. */
final class FilesSection implements Section {
    private final Report report;

    FilesSection(Report report) {
        this.report = report;
    }

    @Override
    public String id() {
        return "files";
    }

    @Override
    public String title() {
        return "Files";
    }

    @Override
    public void write(Html html) throws IOException {
        if (report.files().isEmpty()) {
            html.element("p", "Nothing but this report was written.");
            return;
        }
        Table table = Table.open(
                html, "The files written beside this report", "File", "What", "Pixels", "Pixels per inch", "Size");
        for (WrittenFile file : report.files()) {
            table.row(
                    file.name(),
                    file.kind(),
                    file.size().width() + " × " + file.size().height(),
                    Words.number(file.dpi(), 0),
                    Words.bytes(file.bytes()));
        }
        table.close();
    }
}
