package org.adumbrate.linework.pdf;

import org.adumbrate.geometry.SheetSize;

/**
 * What all content of a page shares, however deep it is nested.
 *
 * @param size of the page
 * @param layers which are shown
 * @param colors as they are worked out
 * @param contents of forms, as they are unpacked
 * @param budget what may still be drawn
 * @param skips what made no sense
 */
record PdfScene(
        SheetSize size, PdfVisibility layers, PdfColors colors, PdfForms contents, PdfBudget budget, PdfSkips skips) {}
