package org.adumbrate.build;

/**
 * Something that a person should know before printing.
 *
 * @param severity how much it matters
 * @param text what, where, and what to do; one line
 */
public record Finding(Severity severity, String text) {
    /** How much a finding matters. */
    public enum Severity {
        /** Good to know. */
        NOTE,
        /** May show in print. */
        WARNING
    }
}
