package org.adumbrate.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.adumbrate.sheetfile.complaint.Nearest;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * Tells what is wrong with a command line in one line, with the nearest word that is known, and in another where to read on.
 */
final class UsageErrors implements IParameterExceptionHandler {
    @Override
    public int handleParseException(ParameterException error, String[] args) {
        CommandSpec command = error.getCommandLine().getCommandSpec();
        String what = error instanceof UnmatchedArgumentException unmatched
                ? unmatched(unmatched, command)
                : error.getArgSpec() != null && error.getArgSpec().type().isEnum() && error.getValue() != null
                        ? noneOf(error)
                        : String.valueOf(error.getMessage())
                                .replace("is not a double", "is not a number")
                                .replace("is not an int", "is not a whole number");
        // a word of the command line may hold anything, line ends and what commands a terminal too
        error.getCommandLine()
                .getErr()
                .println(what.replaceAll("\\s*\\R\\s*", " ").replaceAll("[\\p{Cc}\u2028\u2029]", "?"));
        error.getCommandLine().getErr().println("see " + command.qualifiedName() + " --help");
        return ExitCode.USAGE;
    }

    private static String noneOf(ParameterException error) {
        List<String> words = Arrays.stream(error.getArgSpec().type().getEnumConstants())
                .map(String::valueOf)
                .toList();
        return "'" + error.getValue() + "' is none of " + String.join(", ", words)
                + Nearest.hint(error.getValue(), words);
    }

    private static String unmatched(UnmatchedArgumentException error, CommandSpec command) {
        String word = error.getUnmatched().get(0);
        if (word.startsWith("-") && word.length() > 1) {
            String name = word.split("=", 2)[0];
            return "there is no option " + name + (name.startsWith("--") ? Nearest.hint(name, options(command)) : "");
        }
        if (command.subcommands().isEmpty()) {
            return "'" + word + "' is one word too many" + Nearest.hint("--" + word, options(command));
        }
        return "there is no command '" + word + "'"
                + Nearest.hint(word, command.subcommands().keySet());
    }

    private static List<String> options(CommandSpec command) {
        List<String> names = new ArrayList<>();
        command.options().forEach(option -> names.addAll(List.of(option.names())));
        return names;
    }
}
