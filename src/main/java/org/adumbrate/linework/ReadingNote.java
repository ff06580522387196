package org.adumbrate.linework;

import java.util.Locale;

/**
 * What there is to say of how a file was read, beside what is left out of it.
 *
 * @param kind what it is about
 * @param told for people, a clause without a full stop
 */
public record ReadingNote(Kind kind, String told) {
    /** What a remark is about. */
    public enum Kind {
        /** Another page than the first was taken. */
        PAGE(false),
        /** The file is not as it should be, and all of it was found none the less. */
        MENDED(false),
        /** Something in the file makes no sense and was passed over, so that lines may be missing. */
        SKIPPED(true),
        /** Lines were taken that are notes on the page and not part of it. */
        ANNOTATIONS(false),
        /** Lines show in part only and were taken whole. */
        HALF_SHOWN(false);

        private final boolean doubtful;

        Kind(boolean doubtful) {
            this.doubtful = doubtful;
        }

        /** Such as {@code half-shown}, for machines. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** Whether lines may be missing or wrong. */
        public boolean isDoubtful() {
            return doubtful;
        }
    }
}
