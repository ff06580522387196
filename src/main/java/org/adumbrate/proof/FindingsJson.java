package org.adumbrate.proof;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.adumbrate.fault.Refusal;
import org.adumbrate.json.Json;
import org.adumbrate.preflight.Observation;
import org.adumbrate.preflight.Preflight;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.finding.Trouble;
import org.adumbrate.prepare.open.Edition;

/** What {@code check} finds, as the page hears it. */
final class FindingsJson {
    private FindingsJson() {}

    /** The findings of an edition. */
    static Map<String, Object> of(Edition edition, long version) throws IOException, Refusal {
        return edition.make((sheet, run) -> {
            double dpi = sheet.asked().sheet().resolution().dpi();
            List<Observation> found = Preflight.of(usable(sheet), dpi, run).observations();
            run.step();
            return Json.object(
                    "version", version,
                    "findings", found.stream().map(FindingsJson::one).toList(),
                    "troubles", Troubles.of(sheet.troubles()));
        });
    }

    /** Without inputs that cannot be used: they become troubles, and the rest is looked at all the same. */
    private static PreparedSheet usable(PreparedSheet sheet) {
        List<Trouble> told = sheet.troubles().stream()
                .filter(trouble -> trouble.cause() instanceof Refusal)
                .toList();
        return new PreparedSheet(
                sheet.asked(),
                sheet.files(),
                sheet.sorted(),
                sheet.passes(),
                sheet.drawing(),
                sheet.layers(),
                sheet.remarks(),
                told);
    }

    private static Map<String, Object> one(Observation found) {
        return Json.object(
                "severity", found.severity().name().toLowerCase(Locale.ROOT),
                "key", found.key(),
                "line", found.place().line(),
                "column", found.place().column(),
                "text", found.what(),
                "why", found.why(),
                "remedy", found.remedy(),
                "at",
                        found.at().stream()
                                .map(point -> List.of(point.x(), point.y()))
                                .toList());
    }
}
