package org.adumbrate.proof.http;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** The addresses that there are. */
public final class Routes {
    private final Map<String, Handler> fetched = new HashMap<>();
    private final Map<String, Handler> posted = new HashMap<>();

    /** Answers what is fetched at a path; one that ends in a slash stands for all below it. */
    public Routes get(String path, Handler route) {
        fetched.put(path, route);
        return this;
    }

    /** Answers what is posted to a path. */
    public Routes post(String path, Handler route) {
        posted.put(path, route);
        return this;
    }

    /** The one that answers, nothing where there is no such address for that method. */
    Optional<Handler> of(String method, String path) {
        Map<String, Handler> routes = method.equals("POST") ? posted : fetched;
        Handler exact = routes.get(path);
        if (exact != null) {
            return Optional.of(exact);
        }
        for (int end = path.lastIndexOf('/'); end > 0; end = path.lastIndexOf('/', end - 1)) {
            Handler folder = routes.get(path.substring(0, end + 1));
            if (folder != null) {
                return Optional.of(folder);
            }
        }
        return Optional.empty();
    }
}
