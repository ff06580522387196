package org.adumbrate.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.adumbrate.delivery.BuildPlan;
import org.adumbrate.delivery.BuildResult;
import org.adumbrate.delivery.Output;
import org.adumbrate.fault.Refusal;
import org.adumbrate.json.Json;
import org.adumbrate.output.FileClaims;
import org.adumbrate.output.OutputFile;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.memory.StageClock;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What every command understands, and how every command talks. */
final class CommonOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Option(names = "--quiet", description = "Print nothing but results, errors and refusals.")
    private boolean quiet;

    @Option(names = "--verbose", description = "Tell the time that each stage took.")
    private boolean verbose;

    @Option(
            names = "--json",
            paramLabel = "FILE",
            description = "Write the results as JSON to a file, or to standard output with a dash.")
    private Path json;

    /** Results go here. */
    PrintWriter out() {
        return command.commandLine().getOut();
    }

    /** Talk goes here. */
    PrintWriter err() {
        return command.commandLine().getErr();
    }

    /** True when results for people are wanted on standard output. */
    boolean printsForPeople() {
        return !quiet && printsText();
    }

    /** True when standard output is for text, even if nothing but results is to be printed. */
    boolean printsText() {
        return json == null || !json.toString().equals("-");
    }

    /** True when results are wanted as JSON, wherever. */
    boolean asksForJson() {
        return json != null;
    }

    /** A listener that shows progress, if the launcher says that standard error is a terminal. */
    StageClock.Listener progress() {
        return quiet || !Boolean.getBoolean("adumbrate.terminal")
                ? StageClock.Listener.SILENT
                : new ProgressLine(err());
    }

    /**
     * Looks at what a command will read and write, and at the file for the machine-readable result with it.
     *
     * @throws Refusal if files clash
     * @throws IOException if a file cannot be written
     */
    void guard(FileClaims claims) throws IOException, Refusal {
        if (writesJson()) {
            claims.writes(json, "--json");
        }
        claims.check();
    }

    /** True if the machine-readable result is to go to a file. */
    boolean writesJson() {
        return json != null && !json.toString().equals("-");
    }

    /** Tells where a link was kept, and what is behind it. */
    void tellLink(Path written) {
        OutputFile.behindLink(written)
                .ifPresent(file -> say("note: " + written + " is a link and was kept; written was " + file));
    }

    /** Writes the machine-readable result, if one was asked for. */
    void writeJson(Object result) throws IOException {
        if (json != null) {
            writeJsonText(Json.text(result));
        }
    }

    /** As above, of a result that is JSON already. */
    void writeJsonText(String text) throws IOException {
        if (json == null) {
            return;
        }
        if (json.toString().equals("-")) {
            out().println(text);
            return;
        }
        try (OutputFile file = OutputFile.begin(json)) {
            file.stream().write((text + "\n").getBytes(StandardCharsets.UTF_8));
            file.commit();
        }
        tellLink(json);
    }

    /** Tells what a build would read and write. */
    void tell(BuildPlan plan) {
        if (!printsForPeople()) {
            return;
        }
        out().println("would build a sheet of " + plan.size());
        for (BuildPlan.Read read : plan.reads()) {
            String raster = read.raster().map(size -> size + ", ").orElse("");
            out().printf("read %s: %s%.1f MB%n", read.file(), raster, read.bytes() / 1e6);
        }
        for (BuildPlan.Write write : plan.writes()) {
            out().printf(
                            "write %s: %s, %s at %s dpi, %s%n",
                            write.file(),
                            write.kind(),
                            write.size(),
                            Numbers.plain(Math.round(10 * write.dpi()) / 10.0),
                            (write.replaces() ? "replaces the file that stands there" : "new")
                                    + behindLink(write.file()));
        }
    }

    private static String behindLink(Path output) {
        return OutputFile.behindLink(output)
                .map(file -> "; a link, which is kept, to " + file)
                .orElse("");
    }

    /** Tells how it goes on, in one line. */
    void say(String line) {
        if (!quiet) {
            err().println(line);
        }
    }

    /** Tells what went wrong. */
    void complain(String line) {
        err().println(line);
    }

    /** Tells what a build made and found. */
    void tell(BuildResult result) {
        if (printsForPeople()) {
            for (Output output : result.outputs()) {
                out().printf(
                                "%s: %s, %s at %s dpi, %.1f MB%s%n",
                                output.file(),
                                output.kind(),
                                output.size(),
                                Numbers.plain(Math.round(10 * output.dpi()) / 10.0),
                                output.bytes() / 1e6,
                                behindLink(output.file()));
            }
        }
        if (!quiet) {
            for (Finding finding : result.findings()) {
                err().println((finding.severity() == Finding.Severity.WARNING ? "warning: " : "note: ")
                        + finding.text());
            }
        }
        if (verbose) {
            result.placements().forEach(pass -> err().println(
                            pass.file() + ": " + pass.placement().message()));
            result.seconds().forEach((stage, seconds) -> err().printf("%-14s %6.2f s%n", stage, seconds));
        }
    }
}
