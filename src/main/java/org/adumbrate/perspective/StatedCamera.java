package org.adumbrate.perspective;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.adumbrate.geometry.SheetPoint;

/**
 * What is said of the camera and the floors.
 *
 * @param focalMm the focal length at sheet scale, above zero; not together with the field of view
 * @param fieldOfViewDeg across the sheet's width, between 0 and 180
 * @param principal where the viewing direction meets the sheet; its y is the horizon
 * @param eyeHeightM the eye's height above elevation 0
 * @param turn of the viewing direction in radians, clockwise from the model's +Y, seen from above
 * @param elevationsM the elevation of each floor by its name, in metres; empty where none are known
 */
public record StatedCamera(
        OptionalDouble focalMm,
        OptionalDouble fieldOfViewDeg,
        Optional<SheetPoint> principal,
        OptionalDouble eyeHeightM,
        double turn,
        Map<String, Double> elevationsM) {
    /** Nothing is said. */
    public static final StatedCamera NOTHING = new StatedCamera(
            OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty(), OptionalDouble.empty(), 0, Map.of());

    /**
     * Copies the map, in its order.
     *
     * @throws IllegalArgumentException if focal length and field of view are both said, or one is out of its range
     */
    public StatedCamera {
        elevationsM = Collections.unmodifiableMap(new LinkedHashMap<>(elevationsM));
        boolean focalIsFine = focalMm.isEmpty() || (focalMm.getAsDouble() > 0 && focalMm.getAsDouble() < 1e9);
        boolean fieldIsFine =
                fieldOfViewDeg.isEmpty() || (fieldOfViewDeg.getAsDouble() > 0 && fieldOfViewDeg.getAsDouble() < 180);
        if (!focalIsFine || !fieldIsFine || (focalMm.isPresent() && fieldOfViewDeg.isPresent())) {
            throw new IllegalArgumentException(
                    "a camera has a focal length above zero or a field of view below 180, not " + focalMm + " and "
                            + fieldOfViewDeg);
        }
    }

    /** The same with a focal length that was found out. */
    public StatedCamera withFocal(double mm) {
        return new StatedCamera(
                OptionalDouble.of(mm), OptionalDouble.empty(), principal, eyeHeightM, turn, elevationsM);
    }
}
