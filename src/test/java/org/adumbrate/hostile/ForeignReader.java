package org.adumbrate.hostile;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Has files read in a process of its own with a bounded heap, and starts another where that one hangs or dies. */
final class ForeignReader implements AutoCloseable {
    /** The heap of the worker; a reading that exhausts it has failed. */
    private static final String HEAP = "-Xmx512m";

    /** A worker gives a reading up after 10 s of processor time; one that does not even do that is ended. */
    private static final long LONGEST_WAIT_SECONDS = 150;

    private Process worker;
    private BufferedWriter tasks;
    private BufferedReader answers;

    /** Reads one file as the program would. */
    ForeignResult read(Format format, Path file) throws IOException {
        if (worker == null || !worker.isAlive()) {
            start();
        }
        long start = System.nanoTime();
        String answer;
        try {
            tasks.write(format + "\t" + file + "\n");
            tasks.flush();
            answer = answer();
        } catch (TimeoutException e) {
            end();
            return ForeignResult.lost(Outcome.Kind.HUNG, "no answer", millisSince(start));
        } catch (IOException e) { // a pipe that broke
            answer = null;
        }
        if (answer == null) {
            int code = end();
            return ForeignResult.lost(
                    Outcome.Kind.CRASHED, "the Java machine ended with code " + code, millisSince(start));
        }
        ForeignResult result = ForeignResult.parse(answer);
        if (result.outcome().kind() == Outcome.Kind.HUNG || result.outcome().kind() == Outcome.Kind.GREEDY) {
            end();
        }
        return result;
    }

    private String answer() throws IOException, TimeoutException {
        CompletableFuture<String> line = CompletableFuture.supplyAsync(() -> {
            try {
                return answers.readLine();
            } catch (IOException e) {
                return null;
            }
        });
        try {
            return line.get(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS);
        } catch (InterruptedException | ExecutionException e) {
            throw new IOException("the worker cannot be heard", e);
        }
    }

    private void start() throws IOException {
        List<String> command = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                HEAP,
                "-XX:+UseParallelGC",
                "-XX:TieredStopAtLevel=1",
                "-Djava.awt.headless=true",
                // a library of the tests says on standard error that it has nowhere to log to
                "-Dslf4j.internal.verbosity=ERROR",
                "-cp",
                System.getProperty("java.class.path"),
                ForeignWorker.class.getName());
        worker = new ProcessBuilder(command)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        tasks = worker.outputWriter(StandardCharsets.UTF_8);
        answers = worker.inputReader(StandardCharsets.UTF_8);
    }

    /** Ends the worker and tells its exit code. */
    private int end() throws IOException {
        try {
            if (!worker.waitFor(1, TimeUnit.SECONDS)) {
                worker.destroyForcibly().waitFor();
            }
            return worker.exitValue();
        } catch (InterruptedException e) {
            throw new IOException("the worker cannot be ended", e);
        }
    }

    private static long millisSince(long start) {
        return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
    }

    @Override
    public void close() throws IOException {
        if (worker != null) {
            worker.destroyForcibly();
            end();
        }
    }
}
