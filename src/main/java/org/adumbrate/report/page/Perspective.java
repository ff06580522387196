package org.adumbrate.report.page;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.perspective.FittedHeights;
import org.adumbrate.perspective.View;

/**
 * What is known of the camera.
 *
 * @param view how the sheet shows the model, if that is known
 * @param focalSupposed true where the view has a normal lens for want of a known one
 * @param heights what the height lines tell, if there are any
 * @param elevationsM the floors' elevations by name
 */
public record Perspective(
        Optional<View> view, boolean focalSupposed, Optional<FittedHeights> heights, Map<String, Double> elevationsM) {
    /** Copies the map, in its order. */
    public Perspective {
        elevationsM = Collections.unmodifiableMap(new LinkedHashMap<>(elevationsM));
    }

    /** The sheet y of the horizon in mm, if it is known. */
    Optional<Double> horizonMm() {
        return view.map(View::horizonMm).or(() -> heights.map(FittedHeights::horizonMm));
    }
}
