package org.adumbrate.preflight;

import org.adumbrate.preflight.Observation.Severity;
import org.adumbrate.preflight.Observations.Advice;
import org.adumbrate.sheetfile.form.PaperSize;

/** Whether printers know the sheet. */
final class PageRule implements Rule {
    @Override
    public void look(CheckedSheet sheet, Observations found) {
        if (PaperSize.nameOf(sheet.size()).isEmpty()) {
            found.add(
                    Severity.NOTE,
                    "size",
                    "the sheet is " + sheet.size() + ", which is no paper of ISO 216, ANSI or Arch",
                    new Advice(
                            "it is printed on a larger paper and trimmed, or scaled to fit if nobody looks",
                            "say 100 % to the printer, or choose a paper of the trade"));
        }
    }
}
