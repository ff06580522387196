package org.adumbrate.build.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.sheetfile.PaperSize;

/**
 * A page by the words of the trade.
 *
 * @param text as the sheet file has it
 * @param size its exact size
 */
record PageName(String text, SheetSize size) {
    private static final List<String> PAPERS = List.of(
            "A0", "A1", "A2", "A3", "A4", "A5", "ANSI A", "ANSI B", "ANSI C", "ANSI D", "ANSI E", "Arch A", "Arch B",
            "Arch C", "Arch D", "Arch E", "Arch E1");

    /** Exporters round pages to whole points. */
    private static final double ROUNDED_MM = 0.5;

    /** The paper whose size a page has, or its size in mm. */
    static PageName of(SheetSize page) {
        for (String name : names()) {
            SheetSize paper = PaperSize.parse(name).orElseThrow();
            if (Math.abs(paper.widthMm() - page.widthMm()) <= ROUNDED_MM
                    && Math.abs(paper.heightMm() - page.heightMm()) <= ROUNDED_MM) {
                return new PageName(name, paper);
            }
        }
        String text = String.format(Locale.ROOT, "%.2f x %.2f mm", page.widthMm(), page.heightMm());
        return new PageName(text, PaperSize.parse(text).orElse(page));
    }

    private static List<String> names() {
        List<String> names = new ArrayList<>();
        for (String paper : PAPERS) {
            names.add(paper + " landscape");
            names.add(paper + " portrait");
        }
        return names;
    }
}
