package org.adumbrate.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program: its commands and what they have in common. */
@Command(
        name = "adumbrate",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Turns a folder of model exports into a print-ready perspective section.",
        subcommands = {
            StartCommand.class,
            BuildCommand.class,
            CheckCommand.class,
            MergeCommand.class,
            LinesCommand.class,
            RegisterCommand.class,
            HeightsCommand.class,
            SunCommand.class,
            SchemaCommand.class,
            CompletionCommand.class
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:done",
            "1:findings, or something was refused; nothing was written that should not be trusted",
            "2:the command line could not be understood",
            "3:an input or output could not be read or written",
            "70:a defect in the program"
        },
        footer = {"", "Example:", "  adumbrate build passes/kiln-yard/kiln-yard.sheet.yaml"})
public final class Adumbrate implements Runnable {
    @Spec
    private CommandSpec spec;

    /** Runs the program and ends the process with its exit code. */
    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        System.exit(run(args, out, err));
    }

    /**
     * Runs the program.
     *
     * @param args the command line
     * @param out takes results
     * @param err takes talk
     * @return the exit code
     */
    static int run(String[] args, PrintWriter out, PrintWriter err) {
        return new CommandLine(new Adumbrate())
                .setOut(out)
                .setErr(err)
                .setUsageHelpWidth(112)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setExecutionExceptionHandler(new FaultHandler())
                .execute(args);
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "name a command");
    }
}
