package org.adumbrate.hostile;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.adumbrate.fault.InputFault;
import org.adumbrate.sheetfile.complaint.SheetFileFault;

/**
 * Reads a file in a thread of its own, and watches over time and memory. Time is the processor's, for the machine may be busy
 * with other things; a reading that waits is given up too. The bound of memory is the heap that the tests are given: a reading
 * that exhausts it has failed, even if it says so in a line.
 */
final class Guard {
    static final long MOST_MILLIS = 10_000;

    private static final long LONGEST_WAIT_MILLIS = 120_000;
    private static final long LOOK_MILLIS = 50;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private Guard() {}

    /** Reads one file; a word on standard output or standard error, which only the program itself may use, is a failure. */
    static Outcome read(Path file, Format.Reader reader) {
        PrintStream out = System.out;
        PrintStream err = System.err;
        ByteArrayOutputStream talk = new ByteArrayOutputStream();
        PrintStream caught = new PrintStream(talk, true, StandardCharsets.UTF_8);
        System.setOut(caught);
        System.setErr(caught);
        try {
            Outcome outcome = readAlone(file, reader);
            return talk.size() == 0
                    ? outcome
                    : new Outcome(
                            Outcome.Kind.UNCLEAR, "printed " + talk.toString(StandardCharsets.UTF_8), outcome.millis());
        } finally {
            System.setOut(out);
            System.setErr(err);
        }
    }

    private static Outcome readAlone(Path file, Format.Reader reader) {
        Reading reading = new Reading(file, reader);
        Thread thread = new Thread(reading, "reading " + file.getFileName());
        thread.setDaemon(true);
        long start = System.nanoTime();
        thread.start();
        while (!reading.endsWithin(LOOK_MILLIS)) {
            long worked = TimeUnit.NANOSECONDS.toMillis(THREADS.getThreadCpuTime(thread.getId()));
            long waited = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
            if (worked > MOST_MILLIS || waited > LONGEST_WAIT_MILLIS) {
                String where = Arrays.toString(thread.getStackTrace());
                reading.giveUp();
                return new Outcome(Outcome.Kind.HUNG, where, worked);
            }
        }
        return judged(file, reading.thrown, reading.millis);
    }

    private static Outcome judged(Path file, Throwable thrown, long millis) {
        if (thrown == null) {
            return new Outcome(Outcome.Kind.READ, "", millis);
        }
        if (thrown instanceof OutOfMemoryError || thrown.getCause() instanceof OutOfMemoryError) {
            return new Outcome(Outcome.Kind.GREEDY, thrown.toString(), millis);
        }
        if (thrown instanceof InputFault || thrown instanceof SheetFileFault) {
            boolean clear = lines(thrown).stream().allMatch(line -> isClear(line, file));
            return new Outcome(clear ? Outcome.Kind.REFUSED : Outcome.Kind.UNCLEAR, thrown.getMessage(), millis);
        }
        List<StackTraceElement> trace = Arrays.asList(thrown.getStackTrace());
        String words = thrown + " at " + trace.subList(0, Math.min(trace.size(), 12));
        return new Outcome(Outcome.Kind.CRASHED, words, millis);
    }

    /** A sheet file's fault has a line for each complaint; any other has one. */
    private static List<String> lines(Throwable fault) {
        return fault instanceof SheetFileFault
                ? Arrays.asList(fault.getMessage().split("\n", -1))
                : List.of(fault.getMessage());
    }

    static boolean isClear(String line, Path file) {
        return line.startsWith(file.toString())
                && line.length() < file.toString().length() + 500
                && line.codePoints().noneMatch(Character::isISOControl);
    }

    private static final class Reading implements Runnable {
        private final Path file;
        private final Format.Reader reader;
        private final CountDownLatch end = new CountDownLatch(1);
        private volatile Throwable thrown;
        private volatile long millis;
        private volatile Thread thread;

        Reading(Path file, Format.Reader reader) {
            this.file = file;
            this.reader = reader;
        }

        @Override
        public void run() {
            thread = Thread.currentThread();
            try {
                reader.read(file);
            } catch (IOException | RuntimeException | Error e) {
                thrown = e;
            }
            millis = TimeUnit.NANOSECONDS.toMillis(THREADS.getCurrentThreadCpuTime());
            end.countDown();
        }

        /** Asks the reading to end; one that does not hear goes on in the background. */
        void giveUp() {
            thread.interrupt();
        }

        boolean endsWithin(long millis) {
            try {
                return end.await(millis, TimeUnit.MILLISECONDS);
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
        }
    }
}
