package org.adumbrate.perspective;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * What is known before height lines are looked at.
 *
 * @param horizonMm the sheet y of the horizon
 * @param elevationsM the elevation of each floor by its name; empty where none are known
 * @param eyeHeightM the eye's height above elevation 0; of use to the fit only together with elevations
 */
public record Stated(OptionalDouble horizonMm, Map<String, Double> elevationsM, OptionalDouble eyeHeightM) {
    /** Nothing is known. */
    public static final Stated NOTHING = new Stated(OptionalDouble.empty(), Map.of(), OptionalDouble.empty());

    /** Copies the map. */
    public Stated {
        elevationsM = Map.copyOf(elevationsM);
    }

    /** The horizon alone. */
    public static Stated horizon(double mm) {
        return new Stated(OptionalDouble.of(mm), Map.of(), OptionalDouble.empty());
    }

    /** Elevations alone. */
    public static Stated elevations(Map<String, Double> elevationsM) {
        return new Stated(OptionalDouble.empty(), elevationsM, OptionalDouble.empty());
    }

    /** True if elevations and the eye's height settle how high the eye is above every stated floor. */
    boolean settlesEye() {
        return eyeHeightM.isPresent() && !elevationsM.isEmpty();
    }
}
