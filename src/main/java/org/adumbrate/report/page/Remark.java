package org.adumbrate.report.page;

/**
 * Something that a person should know before printing.
 *
 * @param weight how much it matters
 * @param text one line
 */
public record Remark(Weight weight, String text) {
    /** How much a remark matters, the heaviest first. */
    public enum Weight {
        /** May show in print. */
        WARNING("Warning"),
        /** Good to know. */
        NOTE("Note");

        private final String word;

        Weight(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }
}
