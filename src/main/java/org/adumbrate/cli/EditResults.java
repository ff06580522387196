package org.adumbrate.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.json.Json;
import org.adumbrate.sheetfile.edit.EditResult;

/** What an edit changed, for people in a line for each value, and for machines. */
final class EditResults {
    private static final int LONGEST = 60;

    private EditResults() {}

    /** Such as {@code kiln.sheet.yaml:12: pens.building.width: 0.25 mm -> 0.35 mm}. */
    static String line(Path file, String word, EditResult.Change change) {
        String before = change.before().map(EditResults::shown).orElse("");
        String after = change.after().map(EditResults::shown).orElse("");
        String told = before.isEmpty()
                ? after + " (new)"
                : after.isEmpty()
                        ? before + " removed"
                        : before.equals(after) ? "is " + after + " already" : before + " -> " + after;
        return file + ":" + change.place().line() + ": " + word + change.key() + ": " + told;
    }

    private static String shown(String text) {
        String line = text.strip().replaceAll("[\\p{Cntrl}\\p{Z}]+", " ");
        int end = line.offsetByCodePoints(0, Math.min(LONGEST, line.codePointCount(0, line.length())));
        return end < line.length() ? line.substring(0, end) + "…" : line;
    }

    static Map<String, Object> of(Path file, EditResult result, boolean isDry) {
        if (result instanceof EditResult.Refused refused) {
            List<Map<String, Object>> reasons = refused.reasons().stream()
                    .map(reason -> Json.object("line", reason.line(), "column", reason.column(), "text", reason.text()))
                    .toList();
            return Json.object("file", file, "written", false, "refused", reasons);
        }
        EditResult.Edited edited = (EditResult.Edited) result;
        List<Map<String, Object>> changes =
                edited.changes().stream().map(EditResults::of).toList();
        List<List<Integer>> spans = edited.spans().stream()
                .map(span -> List.of(span.oldFrom(), span.oldTo(), span.newFrom(), span.newTo()))
                .toList();
        return Json.object(
                "file", file, "written", !isDry && !edited.spans().isEmpty(), "changes", changes, "spans", spans);
    }

    private static Map<String, Object> of(EditResult.Change change) {
        Map<String, Object> told = Json.object("key", change.key());
        put(told, "before", change.before());
        put(told, "after", change.after());
        told.put("line", change.place().line());
        told.put("column", change.place().column());
        return told;
    }

    private static void put(Map<String, Object> told, String key, Optional<String> text) {
        text.ifPresent(found -> told.put(key, found));
    }
}
