package org.adumbrate.proof;

import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.json.Json;
import org.adumbrate.json.JsonFault;
import org.adumbrate.prepare.ShownSun;
import org.adumbrate.prepare.memory.Superseded;
import org.adumbrate.prepare.open.Edition;
import org.adumbrate.proof.http.Answer;
import org.adumbrate.proof.http.Ask;
import org.adumbrate.proof.http.Query;
import org.adumbrate.proof.http.Routes;
import org.adumbrate.proof.scene.FaceJson;
import org.adumbrate.proof.scene.OutlinesJson;
import org.adumbrate.proof.scene.SceneInMm;
import org.adumbrate.proof.scene.UnpennedJson;
import org.adumbrate.proof.text.TextState;

/** Where things lie on the sheet as it is written. */
final class SceneRoutes {
    /** More than a hand is off by, in mm. */
    private static final double MOST_REACH = 100;

    private final HeldSheet sheet;
    private Optional<Seen> seen = Optional.empty();

    /** A scene, and of which edition. */
    private record Seen(Edition edition, SceneInMm scene) {}

    private interface Look {
        Object at(SceneInMm scene, Query query) throws IOException;
    }

    private interface Told {
        Object of(Edition edition) throws IOException, Refusal;
    }

    SceneRoutes(HeldSheet sheet) {
        this.sheet = sheet;
    }

    /** Adds their addresses. */
    void at(Routes routes) {
        routes.get("/paper", ask -> paper())
                .get("/scene", ask -> look(ask, (scene, query) -> scene.json(version())))
                .get(
                        "/at",
                        ask -> look(ask, (scene, query) -> Json.object("keys", scene.at(point(query), reach(query)))))
                .get("/snap", ask -> look(ask, (scene, query) -> scene.snap(point(query), reach(query))))
                .get("/face", this::face)
                .get("/shape", ask -> look(ask, (scene, query) -> Json.object("d", scene.shape(query.needed("key")))))
                .get(
                        "/floors",
                        ask -> look(
                                ask,
                                (scene, query) -> Json.object(
                                        "floors",
                                        scene.floors(
                                                point(query), query.text("key").orElse("")))))
                .get("/unpenned", ask -> look(ask, (scene, query) -> UnpennedJson.of(scene.prepared())))
                .get("/sun-by-shadows", ask -> sunByShadows())
                .get("/outlines", ask -> Answer.json(OutlinesJson.of(ask.query().needed("kind"))));
    }

    private long version() {
        return sheet.text().state().version();
    }

    private static SheetPoint point(Query query) throws JsonFault {
        return new SheetPoint(query.number("x"), query.number("y"));
    }

    private static double reach(Query query) throws JsonFault {
        double reach = query.text("reach").isPresent() ? query.number("reach") : 1;
        if (!(reach >= 0 && reach <= MOST_REACH)) {
            throw new JsonFault("reach: expected 0 to " + MOST_REACH + " mm");
        }
        return reach;
    }

    /** How large the sheet is, known long before where things lie on it. */
    private Answer paper() throws IOException {
        try {
            return Answer.json(
                    Json.object("sheet", SceneInMm.paper(sheet.looked().size())));
        } catch (IOException | Refusal trouble) {
            return Answer.json(Json.object("version", version(), "troubles", Troubles.of(trouble)));
        }
    }

    /** The sun that the shadow pass tells, and what may be stated of it; reading it is asked for and takes a moment. */
    private Answer sunByShadows() throws IOException {
        try {
            ShownSun shown = sheet.looked().make(ShownSun::of);
            return Answer.json(Json.object(
                    "value",
                    shown.value()
                            .orElseThrow(() ->
                                    new Refusal("the camera is not known, and no shadow of an upright would lie on"
                                            + " the sheet whole; state camera")),
                    "text",
                    told(shown)));
        } catch (Superseded newer) {
            throw newer;
        } catch (IOException | Refusal trouble) {
            return Answer.json(Json.object("version", version(), "troubles", Troubles.of(trouble)));
        }
    }

    private static String told(ShownSun shown) {
        return shown.hasAngles()
                ? String.format(
                        Locale.ROOT,
                        "An estimate from the shadow pass, give or take %.1f degrees; the azimuth counts from the model's +Y"
                                + " until north is stated",
                        shown.sun().errorDeg())
                : "An estimate from the shadow pass, as one shadow: the camera is not known well enough for angles";
    }

    private Answer look(Ask ask, Look look) throws IOException {
        return told(edition -> look.at(scene(edition), ask.query()));
    }

    /** The face between all lines that are drawn. */
    private Answer face(Ask ask) throws IOException {
        SheetPoint point = point(ask.query());
        return told(edition -> edition.make((prepared, run) -> FaceJson.of(prepared, point, run)));
    }

    private Answer told(Told told) throws IOException {
        while (true) {
            TextState state = sheet.text().state();
            try {
                return Answer.json(told.of(sheet.looked()));
            } catch (Superseded newer) {
                if (sheet.text().state().version() == state.version()) {
                    throw newer;
                }
            } catch (JsonFault notUnderstood) {
                throw notUnderstood;
            } catch (IOException | Refusal trouble) {
                return Answer.json(Json.object("version", state.version(), "troubles", Troubles.of(trouble)));
            }
        }
    }

    /** The scene of an edition, made once. */
    SceneInMm scene(Edition edition) throws IOException, Refusal {
        Optional<Seen> last = seen();
        if (last.isPresent() && last.get().edition() == edition) {
            return last.get().scene();
        }
        SceneInMm scene =
                SceneInMm.of(edition.prepared(), edition.asked().file(), edition.text(), last.map(Seen::scene));
        remember(new Seen(edition, scene));
        return scene;
    }

    private synchronized Optional<Seen> seen() {
        return seen;
    }

    private synchronized void remember(Seen now) {
        seen = Optional.of(now);
    }

    /** All of it, as the page hears it without asking. */
    Map<String, Object> json(Edition edition, long version) throws IOException, Refusal {
        return scene(edition).json(version);
    }
}
