package org.adumbrate.proof;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.json.Json;
import org.adumbrate.json.JsonFault;
import org.adumbrate.json.JsonObject;
import org.adumbrate.prepare.memory.Superseded;
import org.adumbrate.prepare.open.Edition;
import org.adumbrate.proof.http.Answer;
import org.adumbrate.proof.http.Ask;
import org.adumbrate.proof.http.Routes;
import org.adumbrate.proof.text.EditWords;
import org.adumbrate.proof.text.Outcome;
import org.adumbrate.proof.text.ShownText;
import org.adumbrate.sheetfile.edit.Edit;
import org.adumbrate.sheetfile.edit.EditResult;

/** Changes of the text, each answered with the picture that it gives where a page says what it shows. */
final class TextRoutes {
    private final HeldSheet sheet;
    private final PictureRoutes pictures;
    private final Pressing pressing;

    TextRoutes(HeldSheet sheet, PictureRoutes pictures, Pressing pressing) {
        this.sheet = sheet;
        this.pictures = pictures;
        this.pressing = pressing;
    }

    /** Adds their addresses. */
    void at(Routes routes) {
        routes.post("/edit", pressing.first(this::edit))
                .post("/text", pressing.first(ask -> written(ask, sheet.text().typed(version(ask), whole(ask)))))
                .post("/undo", pressing.first(ask -> written(ask, sheet.text().undo(version(ask)))))
                .post("/redo", pressing.first(ask -> written(ask, sheet.text().redo(version(ask)))));
    }

    private static long version(Ask ask) throws JsonFault {
        return ask.body().whole("version");
    }

    /** The text of the file that the typed one stands for. */
    private String whole(Ask ask) throws JsonFault {
        return ShownText.of(sheet.text().state().text().text()).typed(ask.body().text("text"));
    }

    private Answer edit(Ask ask) throws IOException {
        List<Edit> edits = EditWords.edits(ask.body().objects("edits"));
        if (!ask.body().flag("try")) {
            return written(ask, sheet.text().edit(version(ask), edits));
        }
        if (edits.isEmpty()) {
            sheet.settle();
        }
        Outcome outcome = sheet.text().tried(version(ask), edits);
        Map<String, Object> answer = EditWords.answer(outcome);
        if (outcome instanceof Outcome.Done done
                && done.result() instanceof EditResult.Edited edited
                && !edits.isEmpty()) {
            Edition edition = sheet.tries(edited.text());
            if (!addPicture(ask.body(), edition, done.state().version(), true, answer)) {
                return Answer.json(Json.object(
                        "ok", false, "superseded", true, "version", done.state().version()));
            }
        }
        return Answer.json(answer);
    }

    private Answer written(Ask ask, Outcome outcome) throws IOException {
        Map<String, Object> answer = EditWords.answer(outcome);
        if (outcome instanceof Outcome.Done done && done.result() instanceof EditResult.Edited) {
            sheet.settle();
            if (!addPicture(ask.body(), sheet.pictured(false), done.state().version(), false, answer)) {
                answer.put("superseded", true);
            }
        }
        return Answer.json(answer);
    }

    /** False if a newer change has taken this one's place before its picture was made. */
    private boolean addPicture(
            JsonObject body, Edition edition, long version, boolean isTried, Map<String, Object> answer)
            throws IOException {
        Optional<JsonObject> view = body.object("view");
        if (view.isEmpty()) {
            return true;
        }
        try {
            answer.put("picture", pictures.recipe(edition, version, PictureRoutes.view(view.get()), true, isTried));
            return true;
        } catch (Superseded newer) {
            return false;
        } catch (JsonFault notUnderstood) {
            throw notUnderstood;
        } catch (IOException | Refusal trouble) {
            answer.put("troubles", Troubles.of(trouble));
            return true;
        }
    }
}
