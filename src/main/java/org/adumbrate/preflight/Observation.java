package org.adumbrate.preflight;

import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.sheetfile.complaint.Place;

/**
 * Something that was found before printing.
 *
 * @param severity how much it matters
 * @param key the key of the sheet file that it is about, such as {@code passes.shadow}; empty for the sheet as a whole
 * @param place where that stands in the sheet file
 * @param at where on the sheet, if it is at certain places
 * @param what what was found
 * @param why why it matters
 * @param remedy what to do
 */
public record Observation(
        Severity severity, String key, Place place, List<SheetPoint> at, String what, String why, String remedy) {
    /** How much an observation matters, the gravest first. */
    public enum Severity {
        /** The sheet cannot be built, or will not print as it is. */
        ERROR,
        /** May show in print. */
        WARNING,
        /** Good to know. */
        NOTE
    }

    /** Copies the list. */
    public Observation {
        at = List.copyOf(at);
    }
}
