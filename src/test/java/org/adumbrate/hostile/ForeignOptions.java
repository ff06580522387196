package org.adumbrate.hostile;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * What a run over foreign files is asked for.
 *
 * @param folders where the files lie, at any depth
 * @param mutations how many changed copies of each file are read besides
 * @param seed what these are made of
 * @param table the file that tells of each reading; its folder also takes the mutations that went wrong
 */
record ForeignOptions(List<Path> folders, int mutations, long seed, Path table) {
    private static final String USAGE = "FOLDER... [--mutations N] [--seed S] [--table FILE]";

    /** @throws IllegalArgumentException if the arguments are not of that form */
    static ForeignOptions parse(String table, String... arguments) {
        List<Path> folders = new ArrayList<>();
        int mutations = 0;
        long seed = 1;
        Path file = Path.of("target", "foreign", table);
        for (int k = 0; k < arguments.length; k++) {
            if (!arguments[k].startsWith("--")) {
                folders.add(Path.of(arguments[k]));
                continue;
            }
            if (k + 1 == arguments.length) {
                throw new IllegalArgumentException(USAGE);
            }
            String value = arguments[++k];
            switch (arguments[k - 1]) {
                case "--mutations" -> mutations = Integer.parseInt(value);
                case "--seed" -> seed = Long.parseLong(value);
                case "--table" -> file = Path.of(value);
                default -> throw new IllegalArgumentException(USAGE);
            }
        }
        if (folders.isEmpty()) {
            throw new IllegalArgumentException(USAGE);
        }
        return new ForeignOptions(List.copyOf(folders), mutations, seed, file.toAbsolutePath());
    }
}
