package org.adumbrate.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import org.adumbrate.fault.Refusal;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Tells failures to the person at the desk in a line each; only a defect of the program shows where it happened. */
final class FaultHandler implements IExecutionExceptionHandler {
    @Override
    public int handleExecutionException(Exception failure, CommandLine command, ParseResult parsed) {
        PrintWriter err = command.getErr();
        if (failure instanceof Refusal) {
            err.println(failure.getMessage());
            return ExitCode.REFUSED;
        }
        if (failure instanceof UncheckedIOException wrapped) {
            return handleExecutionException(wrapped.getCause(), command, parsed);
        }
        if (failure instanceof IOException) {
            err.println(failure.getMessage());
            return ExitCode.INPUT_OUTPUT;
        }
        err.println("adumbrate: a defect in the program: " + failure);
        failure.printStackTrace(err);
        return ExitCode.DEFECT;
    }
}
