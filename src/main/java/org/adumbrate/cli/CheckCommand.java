package org.adumbrate.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.adumbrate.delivery.SheetClaims;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.json.Json;
import org.adumbrate.preflight.Observation;
import org.adumbrate.preflight.Observation.Severity;
import org.adumbrate.preflight.Preflight;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Looks at a sheet before it is printed. */
@Command(
        name = "check",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Look at a sheet before it is printed: resolution and place of the passes, thin lines, lines without a pen, gaps in",
            "the cut, figures off their floor, the sun, tones that drown lines, page, margins and ink. Nothing is written.",
            "Each finding says what and where (line of the sheet file, mm of the sheet), why it matters and what to do.",
            "Ends with 0 if nothing is graver than a note, and with 1 otherwise."
        },
        footer = {"", "Example:", "  adumbrate check passes/kiln-yard/kiln-yard.sheet.yaml"})
final class CheckCommand implements Callable<Integer> {
    private static final int PLACES = 5;

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Parameters(index = "0", paramLabel = "FILE.sheet.yaml", description = "The sheet file.")
    private Path file;

    @Option(
            names = "--dpi",
            paramLabel = "N",
            description = "Pixels per inch of the print, 36 to 2400, instead of the sheet file's.")
    private Double dpi;

    @Override
    public Integer call() throws IOException, Refusal {
        if (dpi != null && !(dpi >= 36 && dpi <= 2400)) {
            throw new ParameterException(spec.commandLine(), "--dpi must be 36 to 2400");
        }
        common.guard(SheetClaims.looking(file));
        Preflight result = Preflight.of(file, dpi == null ? OptionalDouble.empty() : OptionalDouble.of(dpi));
        if (common.printsForPeople()) {
            print(result);
        }
        common.writeJson(Json.object(
                "file",
                file,
                "passes",
                result.passes(),
                "findings",
                result.observations().stream().map(CheckCommand::json).toList()));
        return result.passes() ? ExitCode.DONE : ExitCode.REFUSED;
    }

    private void print(Preflight result) {
        for (Severity severity : Severity.values()) {
            List<Observation> some = result.of(severity);
            if (!some.isEmpty()) {
                common.out().println(some.size() + " " + word(severity) + (some.size() == 1 ? "" : "s"));
                some.forEach(this::print);
            }
        }
        common.out()
                .println(file + (result.passes() ? ": may be printed" : ": should be looked at before it is printed"));
    }

    private void print(Observation one) {
        common.out()
                .printf(
                        "  %s:%d:%d: %s%n",
                        file, one.place().line(), one.place().column(), one.what());
        if (!one.at().isEmpty()) {
            String more = one.at().size() > PLACES ? " and elsewhere" : "";
            common.out()
                    .println("      at  "
                            + one.at().stream()
                                    .limit(PLACES)
                                    .map(CheckCommand::text)
                                    .collect(Collectors.joining(", ")) + " mm" + more);
        }
        common.out().println("      why " + one.why());
        common.out().println("      do  " + one.remedy());
    }

    private static String text(SheetPoint point) {
        return String.format(Locale.ROOT, "[%.1f, %.1f]", point.x(), point.y());
    }

    private static String word(Severity severity) {
        return severity.name().toLowerCase(Locale.ROOT);
    }

    private static Object json(Observation one) {
        return Json.object(
                "severity", word(one.severity()),
                "key", one.key(),
                "line", one.place().line(),
                "column", one.place().column(),
                "atMm",
                        one.at().stream()
                                .map(point -> List.of(point.x(), point.y()))
                                .toList(),
                "what", one.what(),
                "why", one.why(),
                "remedy", one.remedy());
    }
}
