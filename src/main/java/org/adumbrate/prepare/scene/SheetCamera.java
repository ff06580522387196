package org.adumbrate.prepare.scene;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.adumbrate.fault.Refusal;
import org.adumbrate.figure.depth.DepthScale;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.perspective.CameraFit;
import org.adumbrate.perspective.Contradiction;
import org.adumbrate.perspective.DepthCheck;
import org.adumbrate.perspective.DepthFit;
import org.adumbrate.perspective.DepthReading;
import org.adumbrate.perspective.FittedCamera;
import org.adumbrate.perspective.FittedDepth;
import org.adumbrate.perspective.FittedHeights;
import org.adumbrate.perspective.FloorCheck;
import org.adumbrate.perspective.FloorDoubts;
import org.adumbrate.perspective.FocalFit;
import org.adumbrate.perspective.HeightFit;
import org.adumbrate.perspective.HeightLine;
import org.adumbrate.perspective.HeightLines;
import org.adumbrate.perspective.Stated;
import org.adumbrate.perspective.StatedCamera;
import org.adumbrate.perspective.VanishingPoint;
import org.adumbrate.perspective.VanishingSearch;
import org.adumbrate.perspective.View;
import org.adumbrate.perspective.ViewCheck;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.lines.LaidLines;
import org.adumbrate.prepare.lines.LineFiles;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.sheetfile.Camera;
import org.adumbrate.sheetfile.Degrees;
import org.adumbrate.sheetfile.DepthPass;
import org.adumbrate.sheetfile.Heights;
import org.adumbrate.sheetfile.Metres;
import org.adumbrate.sheetfile.Sheet;

/** The camera of a sheet, put together from what the sheet file states, the height lines and the depth pass. */
public final class SheetCamera {
    private static final String CAMERA = "camera";
    private static final String HEIGHTS = "heights";
    private static final String FLOORS = "floors";
    private static final String DEPTH = "passes.depth";

    private final Sheet sheet;
    private final Optional<SheetDepth> depth;
    private final List<HeightLine> lines;
    private final List<VanishingPoint> meeting;
    private final List<Finding> findings = new ArrayList<>();
    private final List<Contradiction> contradictions = new ArrayList<>();
    private Optional<String> trouble = Optional.empty();
    private final Optional<FittedHeights> heights;
    private final Optional<DepthScale> range;
    private final FittedCamera camera;

    /** How a fit came out. */
    private record Fit(Optional<SheetCamera> camera, Optional<String> refusal) {
        static Fit of(Sheet sheet, LineFiles files, Optional<SheetDepth> depth) {
            try {
                return new Fit(Optional.of(new SheetCamera(sheet, files, depth)), Optional.empty());
            } catch (Refusal reason) {
                return new Fit(Optional.empty(), Optional.of(reason.getMessage()));
            }
        }
    }

    /**
     * Fits the camera.
     *
     * @param depth the depth pass, which may tell the focal length, or need it for its own range
     * @throws Refusal if the range of the depth pass is not stated and the height lines do not tell it
     */
    static SheetCamera of(Sheet sheet, LineFiles files, Optional<SheetDepth> depth, Run run)
            throws IOException, Refusal {
        List<Object> from = new ArrayList<>(List.of(
                files.sheet(),
                sheet.camera(),
                sheet.heights(),
                List.copyOf(sheet.floors().entrySet()),
                files.content(),
                sheet.passes().depth()));
        if (sheet.heights().isPresent()) {
            from.add(run.digest(sheet.heights().get().lines()));
        }
        depth.ifPresent(pass -> from.add(pass.content()));
        Fit fit = run.of(Part.CAMERA, Fit.class, from, () -> Fit.of(sheet, files, depth));
        if (fit.refusal().isPresent()) {
            throw new Refusal(fit.refusal().get());
        }
        return fit.camera().orElseThrow();
    }

    private SheetCamera(Sheet sheet, LineFiles files, Optional<SheetDepth> depth) throws Refusal {
        this.sheet = sheet;
        this.depth = depth;
        this.lines = heightLines(sheet, files);
        this.meeting = VanishingSearch.of(files.paths());
        this.heights = fitHeights();
        StatedCamera stated = stated();
        Optional<DepthScale> known = sheet.passes().depth().flatMap(SheetCamera::statedRange);
        if (known.isPresent()
                && stated.focalMm().isEmpty()
                && stated.fieldOfViewDeg().isEmpty()) {
            stated = withFocalByDepth(stated, known.get());
        }
        this.camera = CameraFit.of(stated, files.sheet(), heights);
        camera.messages().forEach(text -> findings.add(new Finding(Finding.Severity.WARNING, CAMERA, text)));
        known.ifPresent(this::checkRange);
        if (stated.principal().isPresent()) {
            camera.view().flatMap(view -> ViewCheck.of(view, meeting)).ifPresent(contradictions::add);
        }
        this.range = depth.isPresent() && known.isEmpty() ? Optional.of(fitRange()) : known;
    }

    private static List<HeightLine> heightLines(Sheet sheet, LineFiles files) throws Refusal {
        if (files.heights().isEmpty()) {
            return List.of();
        }
        LaidLines laid = files.heights().get();
        return HeightLines.of(
                laid.lines().strokes(), sheet.heights().orElseThrow().color(), laid.toSheet());
    }

    /**
     * The view that people are placed in.
     *
     * @throws Refusal if too little is known; says what is missing; or if what is stated of the floors cannot be true, so that
     *     people on them would have the wrong size
     */
    View view() throws Refusal {
        for (Contradiction one : contradictions) {
            if (one.isSure() && one.key().startsWith(FLOORS)) {
                throw new Refusal(one.key(), one.text());
            }
        }
        return camera.best().orElseThrow(() -> {
            String reason = trouble.map(text -> text + "; ").orElse("");
            return new Refusal("people cannot be placed: " + reason + String.join("; ", camera.missing()));
        });
    }

    /**
     * The view that the building's own shadows are read in.
     *
     * @throws Refusal if too little is known, or the lines contradict the camera; says what to state
     */
    public SunView sunView(SheetSize size) throws Refusal {
        if (camera.best().isEmpty()) {
            String reason = trouble.map(text -> text + "; ").orElse("");
            throw new Refusal(CAMERA, reason + String.join("; ", camera.missing()));
        }
        return SunView.of(sheet, size, camera, heights, meeting);
    }

    /** The same view, if enough is known. */
    public Optional<View> best() {
        return camera.best();
    }

    /** True where the view has a normal lens for want of a known one. */
    public boolean focalSupposed() {
        return camera.view().isEmpty() && camera.supposed().isPresent();
    }

    /** The floors' elevations by name, in metres. */
    public Map<String, Double> elevations() {
        return camera.elevationsM();
    }

    /** What the height lines tell, if there are any. */
    public Optional<FittedHeights> heights() {
        return heights;
    }

    /** What the levels of the depth pass stand for, if there is one. */
    Optional<DepthScale> range() {
        return range;
    }

    /** Where sources disagree, and what was supposed. */
    List<Finding> findings() {
        return findings;
    }

    /** Where what is stated and the height lines cannot both be right. */
    List<Finding> contradictions() {
        return contradictions.stream()
                .map(one -> new Finding(Finding.Severity.WARNING, one.key(), one.text(), one.at()))
                .toList();
    }

    /** Without what is stated of the camera, so that it can be checked; with it where the lines alone do not settle it. */
    private Optional<FittedHeights> fitHeights() {
        if (sheet.heights().isEmpty()) {
            return Optional.empty();
        }
        Heights asked = sheet.heights().get();
        if (lines.isEmpty()) {
            findings.add(new Finding(
                    Finding.Severity.WARNING,
                    HEIGHTS,
                    asked.lines() + ": no upright has the colour " + asked.color() + " of the height lines"));
            return Optional.empty();
        }
        Map<String, Double> elevations = statedElevations();
        OptionalDouble horizon = sheet.camera()
                .flatMap(Camera::principalPoint)
                .map(point -> OptionalDouble.of(point.y()))
                .orElse(OptionalDouble.empty());
        OptionalDouble eye = optional(sheet.camera().flatMap(Camera::eyeHeight).map(Metres::m));
        double height = asked.height().m();
        Optional<FittedHeights> fitted = fit(height, Stated.elevations(elevations));
        Optional<FittedHeights> alone = fit(height, Stated.NOTHING)
                .or(() -> horizon.isEmpty() ? Optional.empty() : fit(height, Stated.horizon(horizon.getAsDouble())));
        alone.ifPresent(told -> contradictions.addAll(FloorCheck.of(told, elevations, eye, fitted)));
        if (elevations.isEmpty()) {
            alone.map(FloorDoubts::of)
                    .orElse(List.of())
                    .forEach(doubt -> findings.add(
                            new Finding(Finding.Severity.NOTE, HEIGHTS, HEIGHTS + ": " + doubt.text(), doubt.at())));
        }
        if (fitted.isPresent()) {
            return fitted;
        }
        try {
            return Optional.of(HeightFit.of(lines, height, new Stated(horizon, elevations, eye), meeting));
        } catch (Refusal together) {
            trouble = Optional.of(asked.lines() + ": " + together.getMessage());
            findings.add(new Finding(Finding.Severity.WARNING, HEIGHTS, trouble.get()));
            return Optional.empty();
        }
    }

    private Optional<FittedHeights> fit(double height, Stated stated) {
        try {
            return Optional.of(HeightFit.of(lines, height, stated, meeting));
        } catch (Refusal reason) {
            return Optional.empty();
        }
    }

    private void checkRange(DepthScale known) {
        Optional<View> view = camera.view();
        boolean isStated = sheet.camera()
                .filter(asked ->
                        asked.focal().isPresent() || asked.fieldOfView().isPresent())
                .isPresent();
        if (isStated && view.isPresent() && sheet.heights().isPresent()) {
            DepthCheck.of(
                            readings(level -> known.near() + level * (known.far() - known.near())),
                            readings(level -> level),
                            view.get().focalMm(),
                            sheet.heights().get().height().m())
                    .ifPresent(contradictions::add);
        }
    }

    private Map<String, Double> statedElevations() {
        Map<String, Double> elevations = new LinkedHashMap<>();
        sheet.floors()
                .forEach((name, floor) -> elevations.put(name, floor.elevation().m()));
        return elevations;
    }

    private StatedCamera stated() {
        Optional<Camera> asked = sheet.camera();
        return new StatedCamera(
                optional(asked.flatMap(Camera::focal).map(Length::mm)),
                optional(asked.flatMap(Camera::fieldOfView).map(Degrees::degrees)),
                asked.flatMap(Camera::principalPoint),
                optional(asked.flatMap(Camera::eyeHeight).map(Metres::m)),
                asked.map(Camera::turn).map(Degrees::radians).orElse(0.0),
                statedElevations());
    }

    private static OptionalDouble optional(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static Optional<DepthScale> statedRange(DepthPass pass) {
        return pass.near().isPresent() && pass.far().isPresent()
                ? Optional.of(
                        new DepthScale(pass.near().get().m(), pass.far().get().m()))
                : Optional.empty();
    }

    private StatedCamera withFocalByDepth(StatedCamera stated, DepthScale scale) {
        List<DepthReading> metres = readings(level -> scale.near() + level * (scale.far() - scale.near()));
        if (metres.isEmpty()) {
            return stated;
        }
        try {
            double focal = FocalFit.of(
                            metres, sheet.heights().orElseThrow().height().m())
                    .focalMm();
            findings.add(new Finding(
                    Finding.Severity.NOTE,
                    CAMERA,
                    "camera: a focal length of %.1f mm, by the depth pass at the height lines".formatted(focal)));
            return stated.withFocal(focal);
        } catch (Refusal reason) {
            findings.add(new Finding(
                    Finding.Severity.WARNING, DEPTH, depth.orElseThrow().file() + ": " + reason.getMessage()));
            return stated;
        }
    }

    private DepthScale fitRange() throws Refusal {
        String file = depth.orElseThrow().file() + ": ";
        if (camera.view().isEmpty() || lines.isEmpty()) {
            throw new Refusal(
                    file + "its near and far are not stated, and to tell them from height lines needs 'heights' and"
                            + " the camera's 'focal' or 'field-of-view'; state near and far, or these");
        }
        try {
            FittedDepth fitted = DepthFit.of(
                    readings(level -> level),
                    camera.view().get().focalMm(),
                    sheet.heights().orElseThrow().height().m());
            findings.add(new Finding(
                    Finding.Severity.NOTE,
                    DEPTH,
                    "passes.depth: from %.2f m to %.2f m, by the height lines"
                            .formatted(fitted.nearM(), fitted.farM())));
            return new DepthScale(fitted.nearM(), fitted.farM());
        } catch (Refusal reason) {
            throw new Refusal(file + reason.getMessage());
        }
    }

    private interface Meaning {
        double of(double level);
    }

    /** What the depth pass shows at the feet of the height lines that stand on a floor. */
    private List<DepthReading> readings(Meaning meaning) {
        List<DepthReading> readings = new ArrayList<>();
        // a line that stands on no floor may be hidden in part, and be of another height than it seems
        List<HeightLine> whole = heights.map(fitted -> fitted.floors().stream()
                        .flatMap(floor -> floor.lines().stream())
                        .toList())
                .orElse(lines);
        for (HeightLine line : whole) {
            SheetPoint foot = line.foot();
            depth.flatMap(pass -> pass.levelAt(foot).stream().boxed().findFirst())
                    .ifPresent(level -> readings.add(new DepthReading(line, meaning.of(level))));
        }
        return readings;
    }
}
