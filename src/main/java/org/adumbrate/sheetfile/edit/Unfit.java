package org.adumbrate.sheetfile.edit;

/** Why an edit cannot be made; becomes a value before it leaves the room. */
final class Unfit extends Exception {
    private static final long serialVersionUID = 1L;

    private final int at;

    /**
     * @param at where in the text, in chars; -1 where no place tells more than the beginning
     * @param reason what is wrong and what to do, one line
     */
    Unfit(int at, String reason) {
        super(reason, null, false, false);
        this.at = at;
    }

    int at() {
        return at;
    }
}
