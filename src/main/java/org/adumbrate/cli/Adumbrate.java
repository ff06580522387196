package org.adumbrate.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Help;
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
            ProofCommand.class,
            EditCommand.class,
            MergeCommand.class,
            LinesCommand.class,
            RegisterCommand.class,
            HeightsCommand.class,
            SunCommand.class,
            SchemaCommand.class,
            CompletionCommand.class,
            HelpCommand.class
        },
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:done",
            "1:findings, or something was refused; nothing was written that should not be trusted",
            "2:the command line could not be understood",
            "3:an input or output could not be read or written",
            "70:a defect in the program"
        },
        footer = {
            "",
            "Examples:",
            "  adumbrate build passes/kiln-yard/kiln-yard.sheet.yaml",
            "  adumbrate help troubleshooting   # the other topics: adumbrate help"
        })
public final class Adumbrate implements Runnable {
    @Spec
    private CommandSpec spec;

    /** Runs the program and ends the process with its exit code. */
    public static void main(String[] args) {
        ResultStream results = new ResultStream(new FileOutputStream(FileDescriptor.out));
        PrintWriter out = new PrintWriter(results, true, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int code = run(args, out, err);
        out.flush();
        System.exit(results.end(code, err));
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
        boolean colored = Colors.here();
        return runShown(args, new ShownWriter(out, colored), new ShownWriter(err, colored));
    }

    private static int runShown(String[] args, PrintWriter out, PrintWriter err) {
        CommandLine program = new CommandLine(new Adumbrate())
                .setOut(out)
                .setErr(err)
                .setColorScheme(Help.defaultColorScheme(Colors.here() ? Help.Ansi.ON : Help.Ansi.OFF))
                .setUsageHelpWidth(112)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler(new UsageErrors())
                .setExecutionExceptionHandler(new FaultHandler());
        // a value may begin with a hyphen, as -15 deg does
        program.getSubcommands().get("edit").setUnmatchedOptionsArePositionalParams(true);
        try {
            return program.execute(args);
        } catch (OutOfMemoryError e) {
            err.println("out of memory (" + e.getMessage() + "); give the Java machine more, such as"
                    + " ADUMBRATE_JAVA_OPTS=-Xmx2g");
            return ExitCode.INPUT_OUTPUT;
        }
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "name a command, such as build, start or help");
    }
}
