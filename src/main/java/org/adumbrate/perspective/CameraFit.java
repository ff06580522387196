package org.adumbrate.perspective;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;

/** Puts the camera together from what is stated and what the height lines tell. What is stated goes before what is fitted. */
public final class CameraFit {
    private static final double HORIZONS_APART_MM = 1;
    private static final double EYES_APART = 0.03;
    private static final double SURE = 3;

    private final StatedCamera stated;
    private final SheetSize sheet;
    private final Optional<FittedHeights> heights;
    private final List<String> messages = new ArrayList<>();
    private final List<String> missing = new ArrayList<>();

    private CameraFit(StatedCamera stated, SheetSize sheet, Optional<FittedHeights> heights) {
        this.stated = stated;
        this.sheet = sheet;
        this.heights = heights;
    }

    /**
     * Puts the camera together.
     *
     * @param sheet the sheet's size: its middle is the principal point's x, and its diagonal the focal length of a normal
     *     lens, where these are not known
     * @param heights what the height lines tell; to check stated values by it, it must have been fitted without them
     */
    public static FittedCamera of(StatedCamera stated, SheetSize sheet, Optional<FittedHeights> heights) {
        return new CameraFit(stated, sheet, heights).fit();
    }

    private FittedCamera fit() {
        Optional<SheetPoint> principal = principal();
        OptionalDouble eye = eyeHeight();
        OptionalDouble focal = focal();
        if (principal.isEmpty()) {
            missing.add("the horizon is not known: give camera.principal-point, or heights");
        }
        if (eye.isEmpty()) {
            missing.add(noEye());
        }
        if (focal.isEmpty()) {
            missing.add("the focal length is not known: give camera.focal, or camera.field-of-view");
        }
        boolean hasPlace = principal.isPresent() && eye.isPresent();
        if (hasPlace && focal.isEmpty()) {
            messages.add(String.format(
                    Locale.ROOT,
                    "the focal length is not known, so a normal lens of %.0f mm, the sheet's diagonal, is supposed; people are"
                            + " as tall as they should be, but shadows computed from the sun's angles are only as right as that"
                            + " guess; give camera.focal, or a shadow on the drawing as sun.sample, from which shadows on floors"
                            + " come out exact",
                    normalLens()));
        }
        Optional<View> view = Optional.empty();
        Optional<View> supposed = Optional.empty();
        if (hasPlace && focal.isPresent()) {
            view = Optional.of(new View(focal.getAsDouble(), principal.get(), eye.getAsDouble(), stated.turn()));
        } else if (hasPlace) {
            supposed = Optional.of(new View(normalLens(), principal.get(), eye.getAsDouble(), stated.turn()));
        }
        return new FittedCamera(view, supposed, elevations(), messages, missing);
    }

    private OptionalDouble focal() {
        if (stated.fieldOfViewDeg().isEmpty()) {
            return stated.focalMm();
        }
        double half = Math.toRadians(stated.fieldOfViewDeg().getAsDouble()) / 2;
        return OptionalDouble.of(sheet.widthMm() / 2 / Math.tan(half));
    }

    /** A lens is called normal if its focal length is the diagonal of the picture. */
    private double normalLens() {
        return Math.hypot(sheet.widthMm(), sheet.heightMm());
    }

    private Optional<SheetPoint> principal() {
        if (stated.principal().isPresent() && heights.isPresent()) {
            compareHorizons(stated.principal().get().y(), heights.get());
        }
        return stated.principal()
                .or(() -> heights.map(fitted -> new SheetPoint(sheet.widthMm() / 2, fitted.horizonMm())));
    }

    private void compareHorizons(double said, FittedHeights fitted) {
        double apart = Math.abs(said - fitted.horizonMm());
        if (apart > Math.max(HORIZONS_APART_MM, SURE * fitted.horizonErrorMm())) {
            messages.add(String.format(
                    Locale.ROOT,
                    "camera.principal-point puts the horizon at y %.1f mm, but the height lines put it at %.1f mm, give or"
                            + " take %.1f mm; the stated one is used",
                    said,
                    fitted.horizonMm(),
                    fitted.horizonErrorMm()));
        }
    }

    private OptionalDouble eyeHeight() {
        Optional<FittedEye> fitted = heights.flatMap(told -> FittedEye.of(told, stated.elevationsM()));
        if (stated.eyeHeightM().isEmpty()) {
            return fitted.map(eye -> OptionalDouble.of(eye.heightM())).orElse(OptionalDouble.empty());
        }
        fitted.ifPresent(eye -> compareEyes(stated.eyeHeightM().getAsDouble(), eye));
        return stated.eyeHeightM();
    }

    private void compareEyes(double said, FittedEye fitted) {
        double apart = Math.abs(said - fitted.heightM());
        if (apart > Math.max(EYES_APART * Math.abs(said), SURE * fitted.errorM())) {
            messages.add(String.format(
                    Locale.ROOT,
                    "camera.eye-height says %.2f m above elevation 0, but the height lines say %.2f m, give or take %.2f m"
                            + "%s; the stated one is used",
                    said,
                    fitted.heightM(),
                    fitted.errorM(),
                    stated.elevationsM().isEmpty()
                            ? " (no elevations are stated, so their lowest floor is taken as 0)"
                            : ""));
        }
    }

    private String noEye() {
        if (heights.isPresent()) {
            return "the height of the eye is not known, for no height line stands on one of the floors "
                    + String.join(", ", stated.elevationsM().keySet())
                    + ": give camera.eye-height, or height lines on one of them";
        }
        return "the height of the eye is not known: give camera.eye-height, or heights";
    }

    private Map<String, Double> elevations() {
        if (!stated.elevationsM().isEmpty() || heights.isEmpty()) {
            return stated.elevationsM();
        }
        List<FittedFloor> floors = heights.get().floors();
        Map<String, Double> elevations = new LinkedHashMap<>();
        for (FittedFloor floor : floors) {
            elevations.put(floor.name(), floors.get(0).eyeHeightM() - floor.eyeHeightM());
        }
        return elevations;
    }
}
