package org.adumbrate.perspective;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The camera as far as it is known.
 *
 * @param view the view; there if the horizon, the eye's height and the focal length are known
 * @param supposed the view with a normal lens, where all but the focal length is known; figures are sized and planted by it
 *     as by the true one, and so are shadows on floors if the sun comes from shadows on the drawing
 * @param elevationsM the floors' elevations in metres by their names: those that are stated, or where none are those of
 *     the height lines' floors, the lowest at 0
 * @param messages what the user should know: where sources disagree, and what was supposed
 * @param missing what the view lacks, each with what to do about it; empty if there is one
 */
public record FittedCamera(
        Optional<View> view,
        Optional<View> supposed,
        Map<String, Double> elevationsM,
        List<String> messages,
        List<String> missing) {
    /** Copies the collections, in their order. */
    public FittedCamera {
        elevationsM = Collections.unmodifiableMap(new LinkedHashMap<>(elevationsM));
        messages = List.copyOf(messages);
        missing = List.copyOf(missing);
    }

    /** The view, or else the supposed one: what figures are sized and planted by. */
    public Optional<View> best() {
        return view.or(() -> supposed);
    }
}
