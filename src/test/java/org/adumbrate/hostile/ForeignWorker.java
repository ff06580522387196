package org.adumbrate.hostile;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryPoolMXBean;
import java.lang.management.MemoryType;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;

/**
 * Reads the files that another process names on standard input, a line each: the format, a tab, the path. Answers each with
 * a line on standard output: how it ended, processor time in ms, the greatest heap in MB, the words. A reading that hung or
 * took all memory leaves this process in a state that would be held against the next file, so it ends then.
 */
final class ForeignWorker {
    private static final List<MemoryPoolMXBean> HEAP = ManagementFactory.getMemoryPoolMXBeans().stream()
            .filter(pool -> pool.getType() == MemoryType.HEAP)
            .toList();

    private ForeignWorker() {}

    public static void main(String[] args) throws IOException {
        PrintStream answers = new PrintStream(System.out, true, StandardCharsets.UTF_8);
        BufferedReader tasks = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        for (String task = tasks.readLine(); task != null; task = tasks.readLine()) {
            String[] parts = task.split("\t", 2);
            HEAP.forEach(MemoryPoolMXBean::resetPeakUsage);
            Outcome outcome = Format.valueOf(parts[0]).read(Path.of(parts[1]));
            answers.println(ForeignResult.line(outcome, heapMegabytes()));
            if (outcome.kind() == Outcome.Kind.HUNG || outcome.kind() == Outcome.Kind.GREEDY) {
                Runtime.getRuntime().halt(0);
            }
        }
        Runtime.getRuntime().halt(0);
    }

    /** What the heap held at most, garbage that was not yet collected included. */
    private static long heapMegabytes() {
        return HEAP.stream().mapToLong(pool -> pool.getPeakUsage().getUsed()).sum() >> 20;
    }
}
