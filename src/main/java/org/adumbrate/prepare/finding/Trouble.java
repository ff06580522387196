package org.adumbrate.prepare.finding;

import java.io.IOException;
import org.adumbrate.fault.Refusal;

/**
 * Why a part of a sheet cannot be shown; the rest of the sheet can.
 *
 * @param key the key path of the sheet file that asked for it
 * @param cause an {@link IOException} of an input, or a {@link Refusal}
 */
public record Trouble(String key, Exception cause) {
    /** @throws IllegalArgumentException if the cause is a defect of the program and no trouble of the sheet's */
    public Trouble {
        if (!(cause instanceof IOException || cause instanceof Refusal)) {
            throw new IllegalArgumentException("not a trouble of a sheet", cause);
        }
    }

    /** Throws what it was caused by, for whoever wants all or nothing. */
    public void raise() throws IOException, Refusal {
        if (cause instanceof Refusal refusal) {
            throw refusal;
        }
        throw (IOException) cause;
    }
}
