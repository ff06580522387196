package org.adumbrate.prepare.memory;

/** What a prepared sheet is put together from, as far as it is held from one run to the next. */
public enum Part {
    LINE_SHEETS("line sheets", true),
    /** Colours that are taken for others. */
    LINE_COLORS("colours of lines", false),
    SORTED_LINES("sorted lines", true),
    /** Made of the lines in no time, and large. */
    PATTERN("pattern", false),
    /** A pass as it was decoded; as large as its file is when unpacked. */
    PIXELS("pixels", false),
    PLACEMENT("placement", true),
    TONES("tones", true),
    CUT("cut", true),
    CUT_LAYERS("layers of the cut", true),
    /** What other lines the cut covers. */
    CUT_COVERS("lines within the cut", false),
    REGIONS("regions", true),
    CLEANED_PENS("cleaned pens", true),
    DEPTH_NUMBERS("numbers of the depth pass", false),
    DEPTH_MAP("depth in metres", false),
    DEPTH_OF_PENS("depth of pens", true),
    FADED_PENS("faded pens", true),
    PROFILE("profile", true),
    CAMERA("camera", false),
    OUTLINES("outlines", false),
    PLANTS("plants", false),
    BIRDS("birds", false),
    BODIES("figures and plants", false),
    SOLIDS("solids", false),
    RECEIVERS("what shadows fall on", false),
    /** What lines part on the sheet. */
    SEEN_FACES("faces of the drawing", false),
    FIGURE_LIGHT("light past figures", false),
    /** A pass on a canvas. */
    PASS_LIGHT("light of passes", false),
    /** A drawing on a canvas. */
    INK("ink", false),
    VEILS("veils", true),
    LAYERS("layers", false),
    UNDERLAY("underlay", true);

    private final String word;
    private final boolean written;

    Part(String word, boolean written) {
        this.word = word;
        this.written = written;
    }

    /** What it is called in messages. */
    public String word() {
        return word;
    }

    /** Whether it is kept for other runs of the program, too. */
    public boolean written() {
        return written;
    }
}
