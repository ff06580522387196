package org.adumbrate.start;

import java.util.Locale;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.sheetfile.form.PaperSize;

/**
 * A page by the words of the trade.
 *
 * @param text as the sheet file has it
 * @param size its exact size
 */
record PageName(String text, SheetSize size) {
    /** The paper whose size a page has, or its size in mm. */
    static PageName of(SheetSize page) {
        String text = PaperSize.nameOf(page)
                .orElseGet(() -> String.format(Locale.ROOT, "%.2f x %.2f mm", page.widthMm(), page.heightMm()));
        return new PageName(text, PaperSize.parse(text).orElse(page));
    }
}
