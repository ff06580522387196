package org.adumbrate.linework.clip;

/** A drawing that asks for more time or memory than any drawing needs; it may be sound, or made to do harm. */
public final class TooIntricateException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** @param what what is too much, and how much is allowed, such as {@code "has a path of more than 5000000 points"} */
    public TooIntricateException(String what) {
        super(what);
    }
}
