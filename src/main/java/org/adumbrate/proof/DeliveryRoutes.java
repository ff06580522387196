package org.adumbrate.proof;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.adumbrate.json.Json;
import org.adumbrate.proof.http.Answer;
import org.adumbrate.proof.http.Ask;
import org.adumbrate.proof.http.Routes;
import org.adumbrate.proof.text.StateJson;

/** Deliveries, and what they left. */
final class DeliveryRoutes {
    /**
     * What is delivered may have been made by anybody, so it is shown where it can do nothing: not a script of it runs with the page's
     * rights (Content Security Policy Level 3, 6.3.2). The report's own policy lets in its own script alone.
     */
    private static final String SHUT_IN =
            "sandbox allow-scripts allow-popups; default-src 'none'; script-src 'unsafe-inline';"
                    + " style-src 'unsafe-inline'; img-src data: blob:; font-src data:; frame-ancestors 'none'";

    private static final String PICTURE =
            "sandbox; default-src 'none'; style-src 'unsafe-inline'; img-src 'self' data:";

    /** Viewers of PDF in browsers do not start in a sandbox, and run nothing of the file with the page's rights. */
    private static final String DOCUMENT = "frame-ancestors 'none'";

    private record Kind(String type, String policy) {}

    private static final Map<String, Kind> KINDS = Map.of(
            "pdf", new Kind("application/pdf", DOCUMENT),
            "svg", new Kind("image/svg+xml", PICTURE),
            "png", new Kind("image/png", PICTURE),
            "html", new Kind("text/html; charset=utf-8", SHUT_IN),
            "htm", new Kind("text/html; charset=utf-8", SHUT_IN));

    private final HeldSheet sheet;
    private final DeliveryDesk desk;

    DeliveryRoutes(HeldSheet sheet, DeliveryDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
    }

    /** Adds their addresses. */
    void at(Routes routes) {
        routes.post("/deliver", this::deliver)
                .post("/deliver/stop", ask -> {
                    desk.stop();
                    return Answer.json(Json.object("ok", true));
                })
                .get("/out/", this::output);
    }

    private Answer deliver(Ask ask) throws IOException {
        if (desk.begin(new LinkedHashSet<>(ask.body().texts("only")))) {
            return Answer.json(Json.object("ok", true));
        }
        Map<String, Object> reason =
                Json.object("line", 1, "column", 1, "text", "a delivery is going on; stop it first");
        return Answer.json(Json.object("ok", false, "reasons", List.of(reason)));
    }

    /** A file that the text names under {@code deliver}, and no other. */
    private Answer output(Ask ask) throws IOException {
        String kind = ask.path().substring("/out/".length());
        Path file = StateJson.outputs(sheet.text().state().text()).get(kind);
        if (file == null || !Files.isRegularFile(file)) {
            return Answer.refused(404, "there is nothing here");
        }
        String name = file.getFileName().toString();
        Kind of = KINDS.get(name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT));
        return of == null
                ? Answer.file("application/octet-stream", file).with("Content-Disposition", "attachment")
                : Answer.file(of.type(), file).with("Content-Security-Policy", of.policy());
    }
}
