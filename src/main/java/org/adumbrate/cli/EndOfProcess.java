package org.adumbrate.cli;

import org.adumbrate.proof.ProofServer;

/**
 * Closes a server whichever way its command ends. Ctrl-C (SIGINT, POSIX.1-2017 2.4) is how it is meant to end, so the process then ends
 * with 0, not with the 130 that the Java machine would give.
 */
final class EndOfProcess {
    private final ProofServer server;
    private final Thread hook;

    private EndOfProcess(ProofServer server) {
        this.server = server;
        this.hook = new Thread(this::end, "ending");
    }

    static EndOfProcess closing(ProofServer server) {
        EndOfProcess end = new EndOfProcess(server);
        Runtime.getRuntime().addShutdownHook(end.hook);
        return end;
    }

    private void end() {
        server.close();
        Runtime.getRuntime().halt(ExitCode.DONE);
    }

    /** Closes it while the process goes on. */
    void close() {
        try {
            if (Runtime.getRuntime().removeShutdownHook(hook)) {
                server.close();
            }
        } catch (IllegalStateException ending) {
            // the hook is at work
        }
    }
}
