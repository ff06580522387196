package org.adumbrate.perspective;

/**
 * A floor in the fit. Heights are counted in statures, so that a height line is 1 tall: the eye is {@code rise - offset}
 * above the floor, where the rise belongs to all floors that are tied together.
 *
 * @param name the stated name; empty where none is known
 * @param group which rise
 * @param offset the floor's elevation above that to which the rise is counted
 */
record Level(String name, int group, double offset) {
    /** A floor that is tied to no other. */
    static Level alone(int group) {
        return new Level("", group, 0);
    }

    boolean isNamed() {
        return !name.isEmpty();
    }
}
