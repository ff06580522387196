package org.adumbrate.figure.outline;

/** What an outline shows. */
public enum OutlineKind {
    /** A person, or people together; the nominal size is the height above the floor of the tallest. */
    PERSON,
    /** A plant; the nominal size is its height. */
    PLANT,
    /** A bird; the nominal size is its wingspan. */
    BIRD
}
