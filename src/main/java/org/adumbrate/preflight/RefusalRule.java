package org.adumbrate.preflight;

import java.util.List;
import org.adumbrate.preflight.Observation.Severity;
import org.adumbrate.sheetfile.complaint.Place;

/** What a build would refuse. */
final class RefusalRule implements Rule {
    @Override
    public void look(CheckedSheet sheet, Observations found) {
        sheet.refusals()
                .forEach(refusal -> found.add(new Observation(
                        Severity.ERROR,
                        "",
                        new Place(refusal.line(), refusal.column()),
                        List.of(),
                        Clauses.first(refusal.text()),
                        "a build refuses this",
                        Clauses.last(refusal.text(), "put it right"))));
    }
}
