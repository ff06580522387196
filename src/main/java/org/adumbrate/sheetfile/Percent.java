package org.adumbrate.sheetfile;

/**
 * A share of a whole.
 *
 * @param percent in percent
 */
public record Percent(double percent) {
    /** The share with 1 for the whole. */
    public double share() {
        return percent / 100;
    }
}
