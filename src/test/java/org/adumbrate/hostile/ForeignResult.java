package org.adumbrate.hostile;

/**
 * How a worker's reading of a file ended.
 *
 * @param outcome what became of it
 * @param heapMegabytes what the heap held at most meanwhile, garbage included
 */
record ForeignResult(Outcome outcome, long heapMegabytes) {
    private static final int LONGEST = 2000;

    /** The line by which a worker tells it. */
    static String line(Outcome outcome, long heapMegabytes) {
        String words = outcome.words().replaceAll("\\p{Cntrl}+", " ");
        return String.join(
                "\t",
                outcome.kind().name(),
                String.valueOf(outcome.millis()),
                String.valueOf(heapMegabytes),
                words.substring(0, Math.min(LONGEST, words.length())));
    }

    static ForeignResult parse(String line) {
        String[] parts = line.split("\t", 4);
        Outcome outcome = new Outcome(Outcome.Kind.valueOf(parts[0]), parts[3], Long.parseLong(parts[1]));
        return new ForeignResult(outcome, Long.parseLong(parts[2]));
    }

    /** Of a worker that ended, or had to be ended, without an answer. */
    static ForeignResult lost(Outcome.Kind kind, String words, long millis) {
        return new ForeignResult(new Outcome(kind, words, millis), 0);
    }
}
