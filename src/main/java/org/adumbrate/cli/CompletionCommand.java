package org.adumbrate.cli;

import java.io.IOException;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.adumbrate.fault.Refusal;
import org.adumbrate.json.Json;
import org.adumbrate.output.FileClaims;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints what a shell needs to complete command lines. */
@Command(
        name = "completion",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = "Print a script by which a shell completes commands, options and files.",
        footer = {
            "",
            "Examples:",
            "  adumbrate completion bash > ~/.local/share/bash-completion/completions/adumbrate",
            "  adumbrate completion zsh > ~/.adumbrate-completion.zsh   # and source it in ~/.zshrc, after compinit",
            "  adumbrate completion fish > ~/.config/fish/completions/adumbrate.fish"
        })
final class CompletionCommand implements Callable<Integer> {
    /** The shells that are known. */
    enum Shell {
        BASH,
        ZSH,
        FISH;

        @Override
        public String toString() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Parameters(index = "0", paramLabel = "SHELL", description = "One of ${COMPLETION-CANDIDATES}.")
    private Shell shell;

    @Override
    public Integer call() throws IOException, Refusal {
        common.guard(new FileClaims());
        CommandLine program = spec.root().commandLine();
        // the script for bash loads what zsh needs to read it
        String script = shell == Shell.FISH
                ? FishCompletion.script(program.getCommandSpec())
                : AutoComplete.bash(program.getCommandName(), program);
        if (!common.asksForJson()) {
            common.out().print(script);
            common.out().flush();
        }
        common.writeJson(Json.object("shell", shell.toString(), "script", script));
        return ExitCode.DONE;
    }
}
