package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.entry;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.junit.jupiter.api.Test;

class CameraFitTest {
    private static final SheetSize TABLOID = new SheetSize(431.8, 279.4);
    private static final OptionalDouble NONE = OptionalDouble.empty();
    private static final List<HeightLine> SOME =
            List.of(new HeightLine(new SheetPoint(300, 230), new SheetPoint(300, 200)));

    private static FittedFloor floor(String name, double eyeHeightM, double errorM) {
        return new FittedFloor(name, eyeHeightM, errorM, SOME, 0.05, List.of());
    }

    private static FittedHeights heights(FittedFloor... floors) {
        return new FittedHeights(1.65, 150.7, 0.1, List.of(floors));
    }

    private static final FittedHeights HEIGHTS = heights(floor("floor-1", 4.25, 0.01), floor("floor-2", 0.9, 0.02));

    private static StatedCamera camera(
            OptionalDouble focal, Optional<SheetPoint> principal, OptionalDouble eye, Map<String, Double> elevations) {
        return new StatedCamera(focal, NONE, principal, eye, 0.2, elevations);
    }

    @Test
    void whatIsStatedIsTaken() {
        SheetPoint principal = new SheetPoint(214, 150.5);
        Map<String, Double> elevations = new LinkedHashMap<>();
        elevations.put("upper", 3.35);
        elevations.put("yard", 0.0);
        FittedCamera fitted = CameraFit.of(
                camera(OptionalDouble.of(260), Optional.of(principal), OptionalDouble.of(4.25), elevations),
                TABLOID,
                Optional.empty());
        assertThat(fitted.view()).contains(new View(260, principal, 4.25, 0.2));
        assertThat(fitted.best()).isEqualTo(fitted.view());
        assertThat(fitted.supposed()).isEmpty();
        assertThat(fitted.elevationsM()).containsExactly(entry("upper", 3.35), entry("yard", 0.0));
        assertThat(fitted.messages()).isEmpty();
        assertThat(fitted.missing()).isEmpty();
    }

    @Test
    void theRestComesFromTheHeightLines() {
        FittedCamera fitted = CameraFit.of(
                camera(OptionalDouble.of(260), Optional.empty(), NONE, Map.of()), TABLOID, Optional.of(HEIGHTS));
        assertThat(fitted.view()).contains(new View(260, new SheetPoint(215.9, 150.7), 4.25, 0.2));
        assertThat(fitted.elevationsM().keySet()).containsExactly("floor-1", "floor-2");
        assertThat(fitted.elevationsM().get("floor-1")).isZero();
        assertThat(fitted.elevationsM().get("floor-2")).isCloseTo(3.35, within(1e-12));
        assertThat(fitted.messages()).isEmpty();
    }

    /** At 60 degrees, half the sheet's width and the focal length are the short legs of half an equilateral triangle. */
    @Test
    void aFieldOfViewIsAFocalLength() {
        StatedCamera stated = new StatedCamera(NONE, OptionalDouble.of(60), Optional.empty(), NONE, 0, Map.of());
        FittedCamera fitted = CameraFit.of(stated, TABLOID, Optional.of(HEIGHTS));
        assertThat(fitted.view().orElseThrow().focalMm()).isCloseTo(215.9 * Math.sqrt(3), within(1e-9));
    }

    @Test
    void withElevationsTheEyeStandsAboveZero() {
        FittedHeights named = heights(floor("yard", 4.25, 0.01), floor("upper", 0.9, 0.02), floor("floor-1", 2, 0.001));
        Map<String, Double> elevations = Map.of("yard", 100.0, "upper", 103.4);
        FittedCamera fitted = CameraFit.of(
                camera(OptionalDouble.of(260), Optional.empty(), NONE, elevations), TABLOID, Optional.of(named));
        double mean = (104.25 * 4 + 104.3) / 5;
        assertThat(fitted.view().orElseThrow().eyeHeightM()).isCloseTo(mean, within(1e-9));
        assertThat(fitted.elevationsM()).isEqualTo(elevations);
    }

    @Test
    void withoutAFocalLengthANormalLensIsSupposedAndTold() {
        FittedCamera fitted = CameraFit.of(StatedCamera.NOTHING, TABLOID, Optional.of(HEIGHTS));
        assertThat(fitted.view()).isEmpty();
        double diagonal = fitted.supposed().orElseThrow().focalMm();
        assertThat(diagonal).isCloseTo(Math.sqrt(431.8 * 431.8 + 279.4 * 279.4), within(1e-9));
        assertThat(fitted.best()).isEqualTo(fitted.supposed());
        assertThat(fitted.missing()).singleElement().asString().contains("give camera.focal");
        assertThat(fitted.messages())
                .singleElement()
                .asString()
                .contains("a normal lens of 514 mm")
                .contains("only as right as that guess")
                .contains("sun.sample");
    }

    @Test
    void whatIsMissingIsToldWithTheRemedy() {
        FittedCamera fitted = CameraFit.of(StatedCamera.NOTHING, TABLOID, Optional.empty());
        assertThat(fitted.best()).isEmpty();
        assertThat(fitted.messages()).isEmpty();
        assertThat(fitted.missing())
                .containsExactly(
                        "the horizon is not known: give camera.principal-point, or heights",
                        "the height of the eye is not known: give camera.eye-height, or heights",
                        "the focal length is not known: give camera.focal, or camera.field-of-view");
    }

    @Test
    void heightLinesOnOtherFloorsDoNotTellTheEye() {
        FittedCamera fitted = CameraFit.of(
                camera(OptionalDouble.of(260), Optional.empty(), NONE, Map.of("loft", 3.0)),
                TABLOID,
                Optional.of(HEIGHTS));
        assertThat(fitted.view()).isEmpty();
        assertThat(fitted.missing()).singleElement().asString().contains("stands on one of the floors loft");
    }

    @Test
    void aStatedHorizonThatTheHeightLinesContradictIsTold() {
        assertThat(messages(new SheetPoint(214, 149.8), 4.25, HEIGHTS)).isEmpty();
        assertThat(messages(new SheetPoint(214, 149.6), 4.25, HEIGHTS))
                .singleElement()
                .asString()
                .contains("puts the horizon at y 149.6 mm, but the height lines put it at 150.7 mm");
        FittedHeights unsure = new FittedHeights(1.65, 150.7, 0.5, HEIGHTS.floors());
        assertThat(messages(new SheetPoint(214, 149.6), 4.25, unsure)).isEmpty();
    }

    @Test
    void aStatedEyeThatTheHeightLinesContradictIsTold() {
        SheetPoint principal = new SheetPoint(214, 150.7);
        assertThat(messages(principal, 4.36, HEIGHTS)).isEmpty();
        assertThat(messages(principal, 4.40, HEIGHTS))
                .singleElement()
                .asString()
                .contains("camera.eye-height says 4.40 m above elevation 0, but the height lines say 4.25 m")
                .contains("lowest floor is taken as 0");
    }

    private static List<String> messages(SheetPoint principal, double eye, FittedHeights heights) {
        StatedCamera stated = camera(OptionalDouble.of(260), Optional.of(principal), OptionalDouble.of(eye), Map.of());
        FittedCamera fitted = CameraFit.of(stated, TABLOID, Optional.of(heights));
        assertThat(fitted.view()).contains(new View(260, principal, eye, 0.2));
        return fitted.messages();
    }

    @Test
    void aFocalLengthThatWasFoundOutIsTakenLikeAStatedOne() {
        StatedCamera stated =
                new StatedCamera(NONE, OptionalDouble.of(60), Optional.empty(), NONE, 0.3, Map.of("yard", 0.0));
        assertThat(stated.withFocal(260))
                .isEqualTo(new StatedCamera(
                        OptionalDouble.of(260), NONE, Optional.empty(), NONE, 0.3, Map.of("yard", 0.0)));
    }

    @Test
    void aCameraHasEitherAFocalLengthOrAFieldOfView() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StatedCamera(
                        OptionalDouble.of(260), OptionalDouble.of(60), Optional.empty(), NONE, 0, Map.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> camera(OptionalDouble.of(0), Optional.empty(), NONE, Map.of()));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StatedCamera(NONE, OptionalDouble.of(180), Optional.empty(), NONE, 0, Map.of()));
    }
}
