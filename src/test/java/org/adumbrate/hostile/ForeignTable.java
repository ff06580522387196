package org.adumbrate.hostile;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The table of all readings, a line for each as it comes in, and what it adds up to. */
final class ForeignTable implements AutoCloseable {
    private final BufferedWriter lines;
    private final Map<Format, Tally> tallies = new EnumMap<>(Format.class);
    private final List<String> bad = new ArrayList<>();
    private long largestHeap;

    ForeignTable(Path file) throws IOException {
        lines = Files.newBufferedWriter(file);
        lines.write("file\tformat\tmutation\toutcome\tprocessorMs\theapMB\twords\n");
    }

    /** Adds a reading of a file, or of a mutation of it; 0 is the file as it is. */
    void add(Path file, Format format, int mutation, ForeignResult result) throws IOException {
        Outcome outcome = result.outcome();
        lines.write(String.join(
                "\t",
                file.toString(),
                format.name(),
                String.valueOf(mutation),
                outcome.kind().name(),
                String.valueOf(outcome.millis()),
                String.valueOf(result.heapMegabytes()),
                outcome.words()));
        lines.newLine();
        lines.flush();
        tallies.computeIfAbsent(format, f -> new Tally()).add(outcome);
        largestHeap = Math.max(largestHeap, result.heapMegabytes());
        if (!outcome.isGood()) {
            bad.add(outcome.kind() + " " + file + (mutation > 0 ? ", mutation " + mutation : "") + ": "
                    + outcome.words());
        }
    }

    /** True if all were read, or refused in one line, in time and within memory. */
    boolean isGood() {
        return bad.isEmpty();
    }

    String summary() {
        StringBuilder text = new StringBuilder();
        bad.forEach(line -> text.append(line).append('\n'));
        text.append(Tally.HEAD);
        tallies.forEach((format, tally) -> text.append(tally.row(format.name())));
        return text.append("largest heap, garbage included: " + largestHeap + " MB\n")
                .toString();
    }

    @Override
    public void close() throws IOException {
        lines.close();
    }
}
