package org.adumbrate.cli;

/** The codes that the program ends with. */
final class ExitCode {
    static final int DONE = 0;
    static final int REFUSED = 1;
    static final int USAGE = 2;
    static final int INPUT_OUTPUT = 3;
    static final int DEFECT = 70;

    private ExitCode() {}
}
