package org.adumbrate.prepare.finding;

import java.util.List;
import org.adumbrate.fault.Shown;
import org.adumbrate.geometry.SheetPoint;

/**
 * Something that a person should know before printing.
 *
 * @param severity how much it matters
 * @param key the key path of the sheet file that it is about, such as {@code figures[3]}; empty where it is about none
 * @param text what, where, and what to do; one line that begins with the key of the sheet file or the file that it is about
 * @param at where on the sheet, if it is at certain places
 */
public record Finding(Severity severity, String key, String text, List<SheetPoint> at) {
    /** How much a finding matters. */
    public enum Severity {
        /** Good to know. */
        NOTE,
        /** May show in print. */
        WARNING
    }

    /** Copies the list; what the text quotes may be shown. */
    public Finding {
        text = Shown.line(text);
        at = List.copyOf(at);
    }

    /** A finding about no place of the sheet in particular. */
    public Finding(Severity severity, String key, String text) {
        this(severity, key, text, List.of());
    }

    /** The same where there is no sheet file. */
    public Finding unkeyed() {
        return new Finding(severity, "", text, at);
    }
}
