package org.adumbrate.perspective;

/**
 * A height line and the floor that it stands on.
 *
 * @param run the pieces that make the line
 * @param level the floor's place among the levels of a pencil
 */
record Standing(Run run, int level) {
    HeightLine line() {
        return run.line();
    }
}
