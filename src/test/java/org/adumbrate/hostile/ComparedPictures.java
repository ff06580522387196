package org.adumbrate.hostile;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The table of pictures that two readers have made of the same files. */
final class ComparedPictures implements AutoCloseable {
    /** As many samples may differ by more than {@link SheetPicture#SLACK}. */
    private static final double FEW = 0.001;

    private final BufferedWriter lines;
    private final boolean present = IndependentReader.isPresent();
    private int same;
    private int different;
    private int ours;
    private int theirs;

    ComparedPictures(Path file) throws IOException {
        lines = Files.newBufferedWriter(file);
        lines.write("file\tverdict\tshareOff\twords\n");
    }

    /** Compares a file that was read or refused with what the other reader does with it. */
    void add(Path file, Outcome outcome) throws IOException {
        if (!present || !outcome.isGood()) {
            return;
        }
        boolean read = outcome.kind() == Outcome.Kind.READ;
        Optional<SheetPicture> own = read ? SheetPicture.of(file) : Optional.empty();
        if (read && own.isEmpty()) {
            line(file, "too large to compare", OptionalDouble.empty(), "");
            return;
        }
        Optional<SheetPicture> other = IndependentReader.read(file);
        if (own.isPresent() && other.isPresent()) {
            compare(file, own.get(), other.get());
        } else if (own.isPresent()) {
            ours++;
            line(file, "read here alone", OptionalDouble.empty(), "");
        } else if (other.isPresent()) {
            theirs++;
            line(file, "read there alone", OptionalDouble.empty(), outcome.words());
        } else {
            line(file, "refused by both", OptionalDouble.empty(), outcome.words());
        }
    }

    private void compare(Path file, SheetPicture own, SheetPicture other) throws IOException {
        if (!own.size().equals(other.size())) {
            different++;
            line(file, "other size", OptionalDouble.empty(), own.size() + ", there " + other.size());
            return;
        }
        double off = own.shareOff(other);
        boolean alike = off <= FEW;
        same += alike ? 1 : 0;
        different += alike ? 0 : 1;
        line(file, alike ? "same" : "differs", OptionalDouble.of(off), alike ? "" : own.firstOff(other));
    }

    private void line(Path file, String verdict, OptionalDouble off, String words) throws IOException {
        String share = off.isPresent() ? String.format(Locale.ROOT, "%.5f", off.getAsDouble()) : "";
        lines.write(String.join("\t", file.toString(), verdict, share, words.replaceAll("\\s+", " ")));
        lines.newLine();
        lines.flush();
    }

    String summary() {
        return present
                ? "pictures the same as the other reader's: " + same + ", different: " + different
                        + ", read here alone: " + ours + ", read there alone: " + theirs + "\n"
                : "no other reader is installed, so no pictures were compared\n";
    }

    @Override
    public void close() throws IOException {
        lines.close();
    }
}
