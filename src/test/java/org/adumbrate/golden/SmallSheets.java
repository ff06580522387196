package org.adumbrate.golden;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.adumbrate.cli.Cli;

/**
 * A copy of the small sheets that show each kind of thing drawn, to build in without touching the tree. By hand: {@code
 * ./adumbrate build src/test/resources/org/adumbrate/golden/pens.sheet.yaml}.
 */
public final class SmallSheets {
    private static final Path SOURCE = Path.of("src", "test", "resources", "org", "adumbrate", "golden");

    private final Path folder;

    private SmallSheets(Path folder) {
        this.folder = folder;
    }

    /** Copies them into a folder. */
    public static SmallSheets in(Path folder) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.list(SOURCE)) {
            files = all.filter(Files::isRegularFile).toList();
        }
        for (Path file : files) {
            Files.copy(file, folder.resolve(file.getFileName()));
        }
        return new SmallSheets(folder);
    }

    /** Builds the sheet of a name as the command line does, and returns the folder of what it delivers. */
    public Path build(String name, String... options) {
        List<String> args = new ArrayList<>(
                List.of("build", folder.resolve(name + ".sheet.yaml").toString()));
        args.addAll(List.of(options));
        Cli result = Cli.run(args.toArray(String[]::new));
        assertThat(result.code()).as(result.err()).isZero();
        assertThat(result.err()).doesNotContain("warning");
        return folder.resolve("out");
    }

    /** A file of the folder. */
    Path file(String name) {
        return folder.resolve(name);
    }
}
