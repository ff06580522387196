package org.adumbrate.report.page;

import java.io.IOException;

/** A table with a caption, heads of columns, and rows whose first cell is their head; it scrolls where it is too wide. */
final class Table {
    private final Html html;

    private Table(Html html) {
        this.html = html;
    }

    static Table open(Html html, String caption, String... heads) throws IOException {
        html.open("div", "class", "wide", "tabindex", "0", "role", "region", "aria-label", caption);
        html.open("table").element("caption", caption).open("thead").open("tr");
        for (String head : heads) {
            html.element("th", head, "scope", "col");
        }
        html.close().closeLine().open("tbody");
        return new Table(html);
    }

    /** A row of text. */
    void row(String head, String... cells) throws IOException {
        html.open("tr").element("th", head, "scope", "row");
        for (String cell : cells) {
            html.element("td", cell);
        }
        html.closeLine();
    }

    void close() throws IOException {
        html.close().close().closeLine();
    }
}
