package org.adumbrate.proof.http;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The addresses that there are. */
public final class Routes {
    private final Map<String, Route> fetched = new HashMap<>();
    private final Map<String, Route> posted = new HashMap<>();

    /** Answers what is fetched at a path; one that ends in a slash stands for all below it. */
    public Routes get(String path, Route route) {
        fetched.put(path, route);
        return this;
    }

    /** Answers what is posted to a path. */
    public Routes post(String path, Route route) {
        posted.put(path, route);
        return this;
    }

    /** The one that answers, nothing where there is no such address for that method. */
    Optional<Route> of(String method, String path) {
        Map<String, Route> routes = method.equals("POST") ? posted : fetched;
        Route exact = routes.get(path);
        if (exact != null) {
            return Optional.of(exact);
        }
        for (int end = path.lastIndexOf('/'); end > 0; end = path.lastIndexOf('/', end - 1)) {
            Route folder = routes.get(path.substring(0, end + 1));
            if (folder != null) {
                return Optional.of(folder);
            }
        }
        return Optional.empty();
    }
}
