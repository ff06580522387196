package org.adumbrate.registration;

/** What makes a pass differ from its sheet. */
public enum Explanation {
    /** It fills the sheet; only its resolution is its own. */
    SAME_RATIO("same-ratio"),
    /** It fills the sheet, but its rows or columns were rounded the other way, so that one is too many or too few. */
    ROUNDED("rounded"),
    /** Uniform bars were added so that it fits another ratio. */
    BARS("bars"),
    /** It shows another window of the view: part of the sheet is missing, or it reaches beyond the page. */
    CROPPED("cropped"),
    /** It was scaled more in one direction than in the other. */
    STRETCHED("stretched"),
    /** It has the sheet's ratio and scale, but its window lies elsewhere. */
    SHIFTED("shifted"),
    /** It has the sheet's ratio, but was taken with another focal length. */
    ZOOMED("zoomed"),
    /** More than one of these. */
    MIXED("mixed"),
    /** It does not belong to the sheet, or it cannot be told that it does. */
    REFUSED("refused");

    private final String word;

    Explanation(String word) {
        this.word = word;
    }

    /** The word for it in messages and in machine-readable results. */
    public String word() {
        return word;
    }
}
