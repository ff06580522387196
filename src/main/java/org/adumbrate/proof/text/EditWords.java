package org.adumbrate.proof.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.adumbrate.json.Json;
import org.adumbrate.json.JsonFault;
import org.adumbrate.json.JsonObject;
import org.adumbrate.sheetfile.complaint.Complaint;
import org.adumbrate.sheetfile.edit.Edit;
import org.adumbrate.sheetfile.edit.EditResult;

/** Edits as a page words them, and what came of them. */
public final class EditWords {
    private static final int MOST_EDITS = 1000;

    private EditWords() {}

    /**
     * The edits that a page asks for.
     *
     * @param asked each with {@code do}, {@code key}, and what that takes
     */
    public static List<Edit> edits(List<JsonObject> asked) throws JsonFault {
        if (asked.size() > MOST_EDITS) {
            throw new JsonFault("edits: expected at most " + MOST_EDITS);
        }
        List<Edit> edits = new ArrayList<>();
        for (JsonObject one : asked) {
            edits.add(edit(one));
        }
        return edits;
    }

    private static Edit edit(JsonObject asked) throws JsonFault {
        String key = asked.text("key");
        return switch (asked.text("do")) {
            case "set" -> new Edit.Set(key, asked.text("value"));
            case "add" -> new Edit.Add(key, asked.text("value"));
            case "remove" -> new Edit.Remove(key);
            case "rename" -> new Edit.Rename(key, asked.text("name"));
            case "move" -> new Edit.Move(key, index(asked));
            default -> throw new JsonFault("do: expected set, add, remove, rename or move");
        };
    }

    private static int index(JsonObject asked) throws JsonFault {
        long index = asked.whole("index");
        if (index < 0 || index > Integer.MAX_VALUE) {
            throw new JsonFault("index: expected 0 or more");
        }
        return (int) index;
    }

    /** What came of a change. */
    public static Map<String, Object> answer(Outcome outcome) {
        if (outcome instanceof Outcome.Stale stale) {
            return Json.object(
                    "ok", false, "stale", true, "version", stale.state().version());
        }
        Outcome.Done done = (Outcome.Done) outcome;
        if (done.result() instanceof EditResult.Refused refused) {
            return Json.object(
                    "ok",
                    false,
                    "version",
                    done.state().version(),
                    "reasons",
                    refused.reasons().stream().map(EditWords::reason).toList());
        }
        EditResult.Edited edited = (EditResult.Edited) done.result();
        ShownText old = ShownText.of(done.before().text());
        ShownText now = ShownText.of(edited.text().text());
        return Json.object(
                "ok", true,
                "version", done.state().version(),
                "text", now.text(),
                "spans",
                        edited.spans().stream()
                                .map(span -> Json.object(
                                        "oldFrom", old.at(span.oldFrom()),
                                        "oldTo", old.at(span.oldTo()),
                                        "newFrom", now.at(span.newFrom()),
                                        "newTo", now.at(span.newTo())))
                                .toList(),
                "changes",
                        edited.changes().stream()
                                .map(change -> Json.object(
                                        "key", change.key(), "before", change.before(), "after", change.after()))
                                .toList());
    }

    private static Map<String, Object> reason(Complaint reason) {
        return Json.object("line", reason.line(), "column", reason.column(), "text", reason.text());
    }
}
