package org.adumbrate.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.adumbrate.fault.Refusal;
import org.adumbrate.json.Json;
import org.adumbrate.start.Start;
import org.adumbrate.start.StartResult;
import org.adumbrate.start.StartResult.Decision;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the first sheet file of a folder of exports. */
@Command(
        name = "start",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Look at a folder of exports and write a sheet file that builds: which line sheet is drawn, which shows trees,",
            "which colour is height lines, which raster is shadow, occlusion or depth. Files are told by what they show and",
            "not by their names. What could not be decided stands in the sheet file as a comment with the choices."
        },
        footer = {"", "Example:", "  adumbrate start passes/kiln-yard --output passes/kiln-yard/first.sheet.yaml"})
final class StartCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Parameters(index = "0", paramLabel = "FOLDER", description = "The folder of the model's exports.")
    private Path folder;

    @Option(
            names = "--output",
            paramLabel = "FILE.sheet.yaml",
            description =
                    "The sheet file to write, which must not exist; in the folder and named as it is if not said.")
    private Path output;

    @Override
    public Integer call() throws IOException, Refusal {
        Path file = output == null ? Start.usual(folder) : output;
        common.guard(Start.claims(folder, file));
        StartResult result = Start.run(folder, file);
        if (common.printsForPeople()) {
            result.decided().forEach(this::print);
            common.out().println("open, as comments in the file:");
            result.open().forEach(this::print);
            common.out().printf("%s: written; see it with adumbrate build %s%n", result.file(), result.file());
        }
        common.writeJson(
                Json.object("file", result.file(), "decided", json(result.decided()), "open", json(result.open())));
        return ExitCode.DONE;
    }

    private void print(Decision decision) {
        common.out().printf("  %-22s %s: %s%n", decision.what(), decision.choice(), decision.reason());
    }

    private static List<Map<String, Object>> json(List<Decision> decisions) {
        return decisions.stream()
                .map(one -> Json.object("what", one.what(), "choice", one.choice(), "reason", one.reason()))
                .toList();
    }
}
