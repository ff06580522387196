package org.adumbrate.cli;

import java.io.PrintWriter;
import java.io.StringWriter;

/**
 * A run of the program in the tests' own process.
 *
 * @param code its exit code
 * @param out what it printed to standard output
 * @param err what it printed to standard error
 */
public record Cli(int code, String out, String err) {
    /** Runs the program. */
    public static Cli run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Adumbrate.run(args, new PrintWriter(out, true), new PrintWriter(err, true));
        return new Cli(code, out.toString(), err.toString());
    }
}
