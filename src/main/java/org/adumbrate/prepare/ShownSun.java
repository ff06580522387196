package org.adumbrate.prepare;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.StraightEdge;
import org.adumbrate.perspective.SunSample;
import org.adumbrate.perspective.View;
import org.adumbrate.perspective.shadows.ShadowSun;
import org.adumbrate.perspective.shadows.ShownSample;
import org.adumbrate.perspective.shadows.SunByShadows;
import org.adumbrate.prepare.finding.Trouble;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.passes.PreparedPass;
import org.adumbrate.prepare.scene.SunView;
import org.adumbrate.registration.LooseEdges;
import org.adumbrate.underlay.PassRole;

/**
 * The sun that the building's own shadows in the shadow pass of a sheet tell, whatever the sheet file states of it.
 *
 * @param sun its direction and how sure that is; its angles mean nothing where the focal
 *     length is not known
 * @param exactErrorDeg how sure it would be if the camera were exactly as it is stated, in degrees
 * @param focalKnown whether the focal length is known
 * @param sample the same as an upright and its shadow on the sheet, if one lies there; it holds for any focal length
 */
public record ShownSun(ShadowSun sun, double exactErrorDeg, boolean focalKnown, Optional<SunSample> sample) {
    private static final String KEY = "passes.shadow";

    /** Angles that are less sure say less than a sample. */
    private static final double USEFUL_DEG = 1.5;

    /**
     * Looks for the sun.
     *
     * @throws Refusal if the sheet has no shadow pass, its view is not known, or its shadows do not tell; says what to do
     */
    public static ShownSun of(PreparedSheet sheet, Run run) throws IOException, Refusal {
        PreparedPass pass = shadow(sheet);
        if (sheet.drawing().isEmpty()) {
            sheet.orRaise();
            throw new Refusal("camera", "the view of the sheet is not known: state camera");
        }
        SunView seen = sheet.drawing().get().scene().camera().sunView(sheet.size());
        List<StraightEdge> edges = LooseEdges.of(
                pass.pixels().image(),
                pass.placement().passToSheet(),
                sheet.files().pattern(run));
        ShadowSun sun = sun(pass, edges, seen.view());
        ShadowSun unsure = sun;
        for (View other : seen.others()) {
            unsure = unsure.orAsFarAs(sun(pass, edges, other));
        }
        return new ShownSun(
                unsure, sun.errorDeg(), seen.focalKnown(), ShownSample.of(seen.view(), sun.direction(), sheet.size()));
    }

    private static PreparedPass shadow(PreparedSheet sheet) throws IOException, Refusal {
        if (sheet.asked().sheet().passes().shadow().isEmpty()) {
            throw new Refusal(
                    "passes",
                    "there is no shadow pass to read the sun from; give passes.shadow, or state where the sun stands");
        }
        for (Trouble trouble : sheet.troubles()) {
            if (trouble.key().equals(KEY)) {
                trouble.raise();
            }
        }
        return sheet.passes().prepared().stream()
                .filter(pass -> pass.request().role() == PassRole.SHADOW)
                .findFirst()
                .orElseThrow();
    }

    private static ShadowSun sun(PreparedPass pass, List<StraightEdge> edges, View view) throws Refusal {
        if (edges.isEmpty()) {
            throw refusal(pass, "it shows no edges of shadows, as under an overcast sky; render it with the sun on");
        }
        try {
            return SunByShadows.of(edges, view);
        } catch (Refusal reason) {
            throw refusal(pass, reason.getMessage());
        }
    }

    private static Refusal refusal(PreparedPass pass, String reason) {
        return new Refusal(
                KEY,
                pass.file() + ": the sun cannot be read from it: " + reason
                        + "; state sun by its angles, by place and time, or by a sample");
    }

    /** Whether the camera is known well enough for the sun's angles to be stated. */
    public boolean hasAngles() {
        return focalKnown && sun.errorDeg() < USEFUL_DEG;
    }

    /** What a sheet file may state as {@code sun}, north left open; a sample where the angles are not known. */
    public Optional<String> value() {
        if (hasAngles()) {
            return Optional.of(String.format(
                    Locale.ROOT,
                    "{ azimuth: %.1f, altitude: %.1f }",
                    sun.direction().azimuthDeg(0),
                    sun.direction().altitudeDeg()));
        }
        return sample.map(one -> "{ sample: { foot: " + written(one.foot()) + ", head: " + written(one.head())
                + ", tip: " + written(one.tip()) + " } }");
    }

    private static String written(SheetPoint point) {
        return String.format(Locale.ROOT, "[%.2f, %.2f]", point.x(), point.y());
    }
}
