package org.adumbrate.proof;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.adumbrate.fault.Refusal;
import org.adumbrate.json.Json;
import org.adumbrate.json.JsonFault;
import org.adumbrate.json.JsonObject;
import org.adumbrate.prepare.memory.Superseded;
import org.adumbrate.prepare.open.Edition;
import org.adumbrate.proof.http.Answer;
import org.adumbrate.proof.http.Ask;
import org.adumbrate.proof.http.Routes;
import org.adumbrate.proof.picture.PictureSource;
import org.adumbrate.proof.picture.PictureView;

/** Pictures of the sheet as it is written, or as it is tried. */
final class PictureRoutes {
    private static final String BYTES = "application/octet-stream";
    private static final int MOST_IDS = 2000;

    private final HeldSheet sheet;
    private final PictureSource source;
    private final Pressing pressing;

    PictureRoutes(HeldSheet sheet, PictureSource source, Pressing pressing) {
        this.sheet = sheet;
        this.source = source;
        this.pressing = pressing;
    }

    /** Adds their addresses. */
    void at(Routes routes) {
        routes.get("/picture", pressing.first(this::picture)).get("/held", pressing.first(this::held));
    }

    /** What a page says that it shows. */
    static PictureView view(JsonObject view) throws JsonFault {
        return PictureView.of(view.numbers("whole", 2), view.numbers("window", 4));
    }

    /** A recipe with the version that it is of; null where nothing is to be shown. */
    Object recipe(Edition edition, long version, PictureView view, boolean isCoarse, boolean isTried)
            throws IOException, Refusal {
        Object recipe = source.recipe(edition, view, isCoarse);
        if (!(recipe instanceof Map<?, ?> members)) {
            return recipe;
        }
        Map<String, Object> versioned = new LinkedHashMap<>();
        versioned.put("version", version);
        versioned.put("tried", isTried);
        members.forEach((name, value) -> versioned.put(name.toString(), value));
        return versioned;
    }

    private Answer picture(Ask ask) throws IOException {
        PictureView view =
                PictureView.of(ask.query().numbers("whole", 2), ask.query().numbers("window", 4));
        boolean isCoarse = isSet(ask, "coarse");
        long version = sheet.text().state().version();
        try {
            boolean isTried = isSet(ask, "tried");
            return Answer.json(recipe(sheet.pictured(isTried), version, view, isCoarse, isTried));
        } catch (Superseded newer) {
            return Answer.json(Json.object("superseded", true));
        } catch (IOException | Refusal trouble) {
            return Answer.json(Json.object("version", version, "troubles", Troubles.of(trouble)));
        }
    }

    private static boolean isSet(Ask ask, String name) {
        return ask.query().text(name).filter("1"::equals).isPresent();
    }

    private Answer held(Ask ask) throws JsonFault {
        List<String> ids = List.of(ask.query().needed("ids").split(","));
        if (ids.size() > MOST_IDS) {
            throw new JsonFault("ids: expected at most " + MOST_IDS);
        }
        return source.held(ids)
                .map(bytes -> Answer.bytes(BYTES, bytes))
                .orElseGet(() -> Answer.refused(404, "one of them is not held any more; ask for the picture again"));
    }
}
