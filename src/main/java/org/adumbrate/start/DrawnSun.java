package org.adumbrate.start;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.StraightEdge;
import org.adumbrate.perspective.SunSample;
import org.adumbrate.perspective.TwoPoints;
import org.adumbrate.perspective.View;
import org.adumbrate.perspective.shadows.ShadowSun;
import org.adumbrate.perspective.shadows.ShownSample;
import org.adumbrate.perspective.shadows.SunByShadows;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.registration.LooseEdges;

/**
 * The sun that the shadow pass tells, as an upright and its shadow on the sheet: whatever a draft supposes of the camera, that casts
 * people's shadows on floors as the building's fall. Its angles are right only if the camera is.
 *
 * @param found the sun and the sample; nothing if the pass does not tell
 * @param trouble why not
 */
record DrawnSun(Optional<Found> found, String trouble) {
    /** Nothing was looked at. */
    static final DrawnSun UNKNOWN = none("no file tells where it stands");

    /**
     * A sun.
     *
     * @param sun as it would stand for the focal length
     * @param focalMm the focal length that is supposed
     * @param sample an upright and its shadow
     */
    record Found(ShadowSun sun, double focalMm, SunSample sample) {}

    /**
     * Reads it from the shadow pass of a draft.
     *
     * @param pattern the lines of the base
     */
    static DrawnSun of(Draft draft, LinePattern pattern) throws IOException {
        Optional<PassFile> shadow = draft.best(PassKind.SHADOW);
        if (shadow.isEmpty()) {
            return UNKNOWN;
        }
        Optional<View> view = view(draft);
        if (view.isEmpty()) {
            return none("how the drawing is seen is not known, so its shadows do not tell where it stands");
        }
        List<StraightEdge> edges =
                LooseEdges.of(shadow.get().image(), shadow.get().placement().passToSheet(), pattern);
        return of(edges, view.get(), draft.size());
    }

    private static DrawnSun of(List<StraightEdge> edges, View view, SheetSize size) {
        try {
            ShadowSun sun = SunByShadows.of(edges, view);
            return ShownSample.of(view, sun.direction(), size)
                    .map(sample -> new DrawnSun(Optional.of(new Found(sun, view.focalMm(), sample)), ""))
                    .orElseGet(() -> none("no shadow of an upright would lie on the sheet whole"));
        } catch (Refusal reason) {
            return none(reason.getMessage());
        }
    }

    private static DrawnSun none(String trouble) {
        return new DrawnSun(Optional.empty(), trouble);
    }

    /** As far as the lines tell it; how high the eye is does not matter here. */
    private static Optional<View> view(Draft draft) {
        if (draft.seen().fitted().isEmpty()) {
            return Optional.empty();
        }
        double horizon = draft.seen().fitted().get().horizonMm();
        if (draft.twoPoints().isPresent()) {
            TwoPoints points = draft.twoPoints().get();
            SheetPoint middle = new SheetPoint(draft.size().widthMm() / 2, horizon);
            return Optional.of(new View(points.focalMm(), middle, 1, points.turn()));
        }
        return draft.seen().central().map(at -> new View(draft.lensMm(), new SheetPoint(at.x(), horizon), 1, 0));
    }
}
