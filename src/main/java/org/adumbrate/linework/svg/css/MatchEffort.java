package org.adumbrate.linework.svg.css;

import org.adumbrate.linework.clip.TooIntricateException;

/** Counts the steps that it takes to apply style sheets to a document, and knows where its elements stand. */
final class MatchEffort {
    private static final int MOST_STEPS = 10_000_000;

    private final SiblingPlaces places = new SiblingPlaces();
    private long steps;

    SiblingPlaces places() {
        return places;
    }

    /** @throws TooIntricateException if more has been spent by now than the styles of any drawing take */
    void spend() {
        if (++steps > MOST_STEPS) {
            throw new TooIntricateException("has style rules that take more than " + MOST_STEPS + " steps to apply");
        }
    }
}
