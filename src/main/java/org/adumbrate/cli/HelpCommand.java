package org.adumbrate.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.adumbrate.sheetfile.complaint.Nearest;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Explains a topic, shows a command's help, or lists both. */
@Command(
        name = "help",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "List commands and topics, explain a topic, or show the help of a command.",
        footer = {"", "Examples:", "  adumbrate help", "  adumbrate help passes", "  adumbrate help build"})
final class HelpCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "TOPIC",
            completionCandidates = HelpTopics.class,
            description = "One of ${COMPLETION-CANDIDATES}, or a command.")
    private String topic;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        Map<String, CommandLine> commands = spec.root().subcommands();
        if (topic == null) {
            list(out, commands);
            return ExitCode.DONE;
        }
        boolean isTopic = HelpTopics.NAMES.contains(topic);
        if (!isTopic && !commands.containsKey(topic)) {
            List<String> known = new ArrayList<>(HelpTopics.NAMES);
            known.addAll(commands.keySet());
            String near = Nearest.hint(topic, known);
            throw new ParameterException(
                    spec.commandLine(),
                    "no topic or command is called '" + topic + "'"
                            + (near.isEmpty() ? "; adumbrate help lists them" : near));
        }
        if (isTopic) {
            out.print(HelpTopics.text(topic));
        }
        if (commands.containsKey(topic)) {
            // the sun is both
            out.print(isTopic ? "\n" : "");
            commands.get(topic).usage(out);
        }
        out.flush();
        return ExitCode.DONE;
    }

    private static void list(PrintWriter out, Map<String, CommandLine> commands) {
        out.println("Commands; see adumbrate help COMMAND:");
        commands.forEach((name, command) -> out.printf(
                "  %-15s %s%n",
                name, firstSentence(command.getCommandSpec().usageMessage().description()[0])));
        out.println();
        out.println("Topics; see adumbrate help TOPIC:");
        HelpTopics.NAMES.forEach(name -> out.printf("  %-15s %s%n", name, HelpTopics.title(name)));
        out.println();
        out.println("The first drawing: adumbrate start FOLDER, then adumbrate build FILE.sheet.yaml");
    }

    /** The first words, which fit on a line. */
    private static String firstSentence(String description) {
        return description.split("[.:,;]", 2)[0];
    }
}
