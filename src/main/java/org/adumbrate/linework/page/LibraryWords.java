package org.adumbrate.linework.page;

/** A library's own words for a failure, fit to stand within one line. */
public final class LibraryWords {
    private static final int LONGEST = 160;

    private LibraryWords() {}

    public static String of(Throwable failure) {
        String message = failure.getMessage();
        if (message == null || message.isBlank()) {
            return failure.getClass().getSimpleName();
        }
        String line = message.strip().replaceAll("\\s+", " ");
        return line.length() <= LONGEST ? line : line.substring(0, LONGEST) + "...";
    }
}
