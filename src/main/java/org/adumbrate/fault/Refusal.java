package org.adumbrate.fault;

/** A request that could be carried out, but whose result should not be trusted, and so is not. */
public final class Refusal extends Exception {
    private static final long serialVersionUID = 1L;

    private final String key;

    /** @param reason what was refused, why, and what to do; one line */
    public Refusal(String reason) {
        this("", reason);
    }

    /**
     * A refusal of something that a sheet file states.
     *
     * @param key its key path in the sheet file, such as {@code floors.upper}; empty where it is nothing in particular
     */
    public Refusal(String key, String reason) {
        super(Shown.line(reason));
        this.key = key;
    }

    /** The key path in the sheet file of what is refused; empty where it is nothing in particular. */
    public String key() {
        return key;
    }
}
