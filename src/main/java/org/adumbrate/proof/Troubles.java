package org.adumbrate.proof;

import java.util.List;
import java.util.Map;
import org.adumbrate.json.Json;
import org.adumbrate.prepare.finding.Trouble;
import org.adumbrate.sheetfile.complaint.SheetFileFault;

/** What keeps a sheet or a part of it from being shown, as the page hears it. */
final class Troubles {
    private Troubles() {}

    /** Of a sheet that cannot be made ready at all. Where its text cannot be followed, the complaints of the text say why. */
    static List<Map<String, Object>> of(Exception cause) {
        return cause instanceof SheetFileFault ? List.of() : List.of(one("", cause));
    }

    /** Of parts of a sheet. */
    static List<Map<String, Object>> of(List<Trouble> troubles) {
        return troubles.stream()
                .map(trouble -> one(trouble.key(), trouble.cause()))
                .toList();
    }

    private static Map<String, Object> one(String key, Exception cause) {
        return Json.object("key", key, "text", String.valueOf(cause.getMessage()));
    }
}
