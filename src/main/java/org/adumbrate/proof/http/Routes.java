package org.adumbrate.proof.http;

import java.util.Optional;
import java.util.TreeMap;

/** The addresses that there are. */
public final class Routes {
    private final TreeMap<String, Route> fetched = new TreeMap<>();
    private final TreeMap<String, Route> posted = new TreeMap<>();

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
        TreeMap<String, Route> routes = method.equals("POST") ? posted : fetched;
        Route exact = routes.get(path);
        if (exact != null) {
            return Optional.of(exact);
        }
        String folder = path.substring(0, path.lastIndexOf('/') + 1);
        return folder.length() > 1 ? Optional.ofNullable(routes.get(folder)) : Optional.empty();
    }
}
