package org.adumbrate.proof.http;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * All scripts that a page's first one imports, and what these import. A browser that is told of them at once need not find out one after the
 * other.
 *
 * @param addresses of the scripts of the page, in the order in which they are found
 */
record ModuleGraph(List<String> addresses) {
    private static final Pattern IMPORT =
            Pattern.compile("(?m)^(?:import|export)\\s(?:[^;\"(]*?\\sfrom\\s)?\"(\\.[^\"]+)\"");

    /** Copies the list. */
    ModuleGraph {
        addresses = List.copyOf(addresses);
    }

    /**
     * Finds them.
     *
     * @param beside the class in whose package the folder {@code page} lies
     * @param first the name of the first script
     */
    static ModuleGraph of(Class<?> beside, String first) throws IOException {
        Set<String> found = new LinkedHashSet<>(List.of("/page/" + first));
        Deque<String> open = new ArrayDeque<>(found);
        while (!open.isEmpty()) {
            String address = open.remove();
            Matcher imports = IMPORT.matcher(text(beside, address.substring(1)));
            while (imports.find()) {
                String next = URI.create(address).resolve(imports.group(1)).getPath();
                if (found.add(next)) {
                    open.add(next);
                }
            }
        }
        return new ModuleGraph(List.copyOf(found));
    }

    private static String text(Class<?> beside, String name) throws IOException {
        try (InputStream in = beside.getResourceAsStream(name)) {
            return in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Links that make a browser fetch them (HTML Living Standard, 4.6.7.12, {@code modulepreload}), with libraries. */
    String links(Iterable<String> libraries) {
        Set<String> all = new LinkedHashSet<>(addresses);
        libraries.forEach(name -> all.add("/lib/" + name + ".js"));
        return all.stream()
                .map(address -> "<link rel=\"modulepreload\" href=\"" + address + "\">")
                .collect(Collectors.joining("\n"));
    }
}
