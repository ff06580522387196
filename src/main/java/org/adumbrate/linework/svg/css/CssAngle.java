package org.adumbrate.linework.svg.css;

import java.util.OptionalDouble;

/** Angles (CSS Values and Units Level 4, 7.1). */
public final class CssAngle {
    private CssAngle() {}

    /** In degrees, as which a number without a unit counts; empty if it is no angle. */
    public static OptionalDouble degrees(CssLength written) {
        return switch (written.unit()) {
            case "", "deg" -> OptionalDouble.of(written.value());
            case "grad" -> OptionalDouble.of(written.value() * 0.9);
            case "rad" -> OptionalDouble.of(Math.toDegrees(written.value()));
            case "turn" -> OptionalDouble.of(written.value() * 360);
            default -> OptionalDouble.empty();
        };
    }
}
