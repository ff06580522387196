package org.adumbrate.cli;

import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** Completion for the fish shell: a line for each command and option; arguments are files unless they are one of a few words. */
final class FishCompletion {
    private FishCompletion() {}

    static String script(CommandSpec program) {
        String name = program.name();
        StringBuilder script = new StringBuilder();
        String first = "complete -c " + name + " -n __fish_use_subcommand";
        for (Map.Entry<String, CommandLine> command : program.subcommands().entrySet()) {
            script.append(first + " -f -a " + command.getKey()
                    + described(
                            command.getValue().getCommandSpec().usageMessage().description()) + "\n");
        }
        program.options().forEach(option -> script.append(first + written(option) + "\n"));
        program.subcommands().forEach((command, line) -> {
            String within = "complete -c " + name + " -n '__fish_seen_subcommand_from " + command + "'";
            line.getCommandSpec().options().forEach(option -> script.append(within + written(option) + "\n"));
            line.getCommandSpec().positionalParameters().forEach(argument -> {
                if (argument.completionCandidates() != null) {
                    script.append(
                            within + " -f -a " + quoted(String.join(" ", argument.completionCandidates())) + "\n");
                }
            });
        });
        return script.toString();
    }

    private static String written(OptionSpec option) {
        StringBuilder words = new StringBuilder();
        for (String name : option.names()) {
            words.append(name.startsWith("--") ? " -l " + name.substring(2) : " -s " + name.substring(1));
        }
        if (option.arity().max() > 0) {
            words.append(" -r");
        }
        return words + described(option.description());
    }

    private static String described(String... lines) {
        return lines.length == 0 ? "" : " -d " + quoted(String.join(" ", lines));
    }

    private static String quoted(String text) {
        return "'" + text.replace("%n", " ").replace("\\", "\\\\").replace("'", "\\'") + "'";
    }
}
