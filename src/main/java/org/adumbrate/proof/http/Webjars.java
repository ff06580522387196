package org.adumbrate.proof.http;

import java.io.InputStream;
import java.util.Map;
import java.util.TreeMap;
import org.adumbrate.json.Json;

/**
 * The libraries that a page may load, as they lie in their jars; nothing else of these jars is served.
 *
 * @param modules by the name under which scripts import them, where each lies below {@code META-INF/resources/webjars}
 */
public record Webjars(Map<String, String> modules) {
    private static final String FOLDER = "/META-INF/resources/webjars/";

    /** What a text pane by CodeMirror is made of; a test holds the versions against those of the build. */
    public static final Webjars TEXT_PANE = new Webjars(Map.of(
            "@codemirror/commands", "codemirror__commands/6.10.4/dist/index.js",
            "@codemirror/language", "codemirror__language/6.12.4/dist/index.js",
            "@codemirror/state", "codemirror__state/6.7.1/dist/index.js",
            "@codemirror/view", "codemirror__view/6.43.7/dist/index.js",
            "@lezer/common", "lezer__common/1.5.2/dist/index.js",
            "@lezer/highlight", "lezer__highlight/1.2.3/dist/index.js",
            "@marijn/find-cluster-break", "marijn__find-cluster-break/1.0.3/src/index.js",
            "crelt", "crelt/1.0.7/index.js",
            "style-mod", "style-mod/4.1.3/src/style-mod.js",
            "w3c-keyname", "w3c-keyname/2.2.8/index.js"));

    /** The import map (HTML Living Standard, 8.1.6.2) that leads each name to its address. */
    String importMap() {
        Map<String, String> imports = new TreeMap<>();
        modules.keySet().forEach(name -> imports.put(name, "/lib/" + name + ".js"));
        return Json.text(Map.of("imports", imports));
    }

    /** The text of a module; nothing where there is none of that name. */
    InputStream open(String name) {
        String place = modules.get(name);
        return place == null ? null : Webjars.class.getResourceAsStream(FOLDER + place);
    }
}
