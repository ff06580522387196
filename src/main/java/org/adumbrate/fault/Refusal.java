package org.adumbrate.fault;

/** A request that could be carried out, but whose result should not be trusted, and so is not. */
public final class Refusal extends Exception {
    private static final long serialVersionUID = 1L;

    /** @param reason what was refused, why, and what to do; one line */
    public Refusal(String reason) {
        super(Shown.line(reason));
    }
}
