package org.adumbrate.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The program: its global options and its commands. */
@Command(
        name = "adumbrate",
        mixinStandardHelpOptions = true,
        description = "Turns a folder of model exports into a print-ready perspective section.")
public final class Adumbrate implements Runnable {
    /** Runs the program and ends the process with its exit code. */
    public static void main(String[] args) {
        System.exit(new CommandLine(new Adumbrate()).execute(args));
    }

    @Override
    public void run() {
        CommandLine.usage(this, System.out);
    }
}
