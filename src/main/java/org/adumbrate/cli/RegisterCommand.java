package org.adumbrate.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.adumbrate.delivery.RegistrationRun;
import org.adumbrate.fault.Refusal;
import org.adumbrate.json.Json;
import org.adumbrate.prepare.passes.PassPlacement;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Places passes on a line sheet and tells where they lie. */
@Command(
        name = "register",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Find where passes lie on a line sheet, and say how sure that is. Writes no underlay.",
        footer = {
            "",
            "Examples:",
            "  adumbrate register passes/kiln-yard/lines.pdf passes/kiln-yard/shadow.jpg passes/kiln-yard/occlusion.png",
            "  adumbrate register passes/kiln-yard/lines.pdf passes/kiln-yard/shadow.jpg --picture out/placed.png"
        })
final class RegisterCommand implements Callable<Integer> {
    @Mixin
    private CommonOptions common;

    @Parameters(index = "0", paramLabel = "LINES", description = "The line sheet, PDF or SVG.")
    private Path lines;

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "PASS", description = "The passes to place.")
    private List<Path> passes;

    @Option(
            names = "--picture",
            paramLabel = "FILE.png",
            description = {
                "Draw the lines over the pass where it was placed, with the place enlarged where they disagree most;",
                "of several passes, each gets a picture with its own name added."
            })
    private Path picture;

    @Override
    public Integer call() throws IOException, Refusal {
        Optional<Path> drawn = Optional.ofNullable(picture);
        common.guard(RegistrationRun.claims(lines, passes, drawn));
        RegistrationRun run = RegistrationRun.of(lines, passes, drawn);
        drawn.ifPresent(file -> passes.forEach(pass -> common.tellLink(RegistrationRun.file(file, pass, passes))));
        if (common.printsForPeople()) {
            common.out().printf("%s: %s%n", lines, run.sheet());
            for (PassPlacement pass : run.placements()) {
                print(pass);
            }
        }
        common.writeJson(Json.object(
                "sheet",
                Results.sheet(lines, run.sheet()),
                "placements",
                run.placements().stream().map(Results::of).toList()));
        boolean all =
                run.placements().stream().allMatch(pass -> pass.placement().aligned());
        return all ? ExitCode.DONE : ExitCode.REFUSED;
    }

    private void print(PassPlacement pass) {
        var placement = pass.placement();
        common.out()
                .printf(
                        "  %-24s %-8s %-11s residual %s px  confidence %s%n      %s%n",
                        pass.file().getFileName(),
                        placement.status().word(),
                        placement.explains().word(),
                        two(placement.residualPx()),
                        two(placement.confidence()),
                        placement.message());
    }

    private static String two(double number) {
        return Double.isNaN(number) ? "-" : String.format(java.util.Locale.ROOT, "%.2f", number);
    }
}
