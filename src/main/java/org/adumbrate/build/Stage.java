package org.adumbrate.build;

/** What is worth keeping of a build. */
enum Stage {
    LINE_SHEETS("line sheets", true),
    SORTED_LINES("sorted lines", true),
    /** Made of the lines in no time, and large. */
    PATTERN("pattern", false),
    PLACEMENT("placement", true),
    TONES("tones", true),
    CUT("cut", true),
    REGIONS("regions", true),
    CLEANED_PENS("cleaned pens", true),
    DEPTH_OF_PENS("depth of pens", true),
    FADED_PENS("faded pens", true),
    PROFILE("profile", true),
    VEILS("veils", true),
    UNDERLAY("underlay", true);

    private final String word;
    private final boolean written;

    Stage(String word, boolean written) {
        this.word = word;
        this.written = written;
    }

    /** What it is called in messages. */
    String word() {
        return word;
    }

    /** Whether it is kept for other runs, too. */
    boolean written() {
        return written;
    }
}
