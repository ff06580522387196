package org.adumbrate.start;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.adumbrate.fault.Shown;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.linework.pens.LineRole;
import org.adumbrate.linework.pens.PenSuggestion;
import org.adumbrate.perspective.FittedDepth;
import org.adumbrate.perspective.FittedHeights;
import org.adumbrate.perspective.FloorDoubts;
import org.adumbrate.perspective.HeightLine;

/** Writes a draft as a sheet file with comments. */
final class DraftText {
    /** Lines that stand back behind the building's are drawn in a dark grey. */
    private static final Set<LineRole> RECEDING =
            Set.of(LineRole.PAVING, LineRole.NEIGHBOUR, LineRole.GLASS, LineRole.PLANTING);

    private final Draft draft;
    private final DraftPens pens;
    private final Path folder;
    private final String name;
    private final StringBuilder text = new StringBuilder();

    private DraftText(Draft draft, Path folder, String name) {
        this.draft = draft;
        this.pens = DraftPens.of(draft.roles());
        this.folder = folder;
        this.name = name;
    }

    /**
     * The text of a sheet file.
     *
     * @param folder where it will stand, from which it names files
     * @param name of the drawing, for the files that it makes
     */
    static String of(Draft draft, Path folder, String name) {
        DraftText writing = new DraftText(draft, folder, name);
        writing.head();
        writing.lines();
        writing.passes();
        writing.perspective();
        writing.sun();
        writing.pens();
        writing.figures();
        writing.deliver();
        return writing.text.toString();
    }

    private void head() {
        line("# A first draft. What could not be decided stands here as a comment with the choices.");
        line("# Build it, look at out/preview.png, then change it: adumbrate schema describes every key.");
        line("");
        row(
                "size: " + PageName.of(draft.roles().base().page()).text(),
                "the page of the lines: " + draft.roles().base().page());
        row("resolution: 300", "pixels per inch of the underlay");
    }

    private void lines() {
        line("");
        row(
                "lines: " + file(draft.roles().base().file()),
                draft.roles().base().strokes().size() + " strokes");
        draft.unused().forEach(one -> line("# not used: " + file(one.file()) + ": " + plain(one.reason())));
    }

    private void passes() {
        line("");
        boolean none = draft.best(PassKind.SHADOW).isEmpty()
                && draft.best(PassKind.OCCLUSION).isEmpty()
                && draft.range().isEmpty();
        line(none ? "# passes:" : "passes:");
        printed(PassKind.SHADOW, none, 60, "the sun's shadow");
        printed(PassKind.OCCLUSION, none, 45, "soft shade in corners");
        depth(none);
        for (PassFile pass : draft.passes()) {
            if (!pass.placement().aligned()) {
                line("  # not used: " + file(pass.file()) + ": "
                        + plain(pass.placement().message()));
            } else if (pass.guess().kind() == PassKind.UNKNOWN) {
                line("  # undecided: " + file(pass.file()) + " lies on the lines, but "
                        + pass.guess().reason()
                        + "; if it is one, name it as shadow, occlusion, figure-shadow or depth");
            }
        }
    }

    private void printed(PassKind kind, boolean none, int opacity, String words) {
        List<PassFile> all = draft.all(kind);
        String key = kind.word() + ": ";
        if (all.isEmpty()) {
            line((none ? "#   " : "  # ") + key + "{ file: FILE, opacity: " + opacity + " }   # " + words
                    + ": no raster here looks like it");
            return;
        }
        PassFile best = all.get(0);
        row(
                "  " + key + "{ file: " + file(best.file()) + ", opacity: " + opacity + " }",
                String.format(Locale.ROOT, "%s; %.0f ppi", best.guess().reason(), best.ppi()));
        for (PassFile other : all.subList(1, all.size())) {
            boolean hasEdges = other.look().drawn() > 1.5 * best.look().drawn();
            line("  # or " + file(other.file()) + (hasEdges ? ", which has edges drawn into it" : ", which looks alike")
                    + String.format(Locale.ROOT, "; %.0f ppi", other.ppi()));
        }
    }

    private void depth(boolean none) {
        Optional<PassFile> pass = draft.best(PassKind.DEPTH);
        if (pass.isEmpty()) {
            line((none ? "#   " : "  # ")
                    + "depth: { file: FILE }   # distance from the eye, 16 bits: hides figures behind things");
            return;
        }
        String file = file(pass.get().file());
        if (draft.range().isEmpty()) {
            line((none ? "#   " : "  # ") + "depth: { file: " + file + ", near: METRES, far: METRES }   # "
                    + pass.get().guess().reason() + "; say what its first and last level stand for");
            return;
        }
        FittedDepth range = draft.range().get();
        row(
                String.format(
                        Locale.ROOT,
                        "  depth: { file: %s, near: %.2f m, far: %.2f m }",
                        file,
                        range.nearM(),
                        range.farM()),
                pass.get().guess().reason() + "; the range goes with the focal length below");
    }

    private void perspective() {
        line("");
        if (draft.roles().heights().isEmpty()) {
            line(
                    "# No colour looks like height lines, so no one can stand in the drawing yet. Draw uprights as tall as a");
            line("# person on every floor, near and far, in a colour of their own, export them, and say:");
            line("# heights: { lines: FILE, color: \"#RRGGBB\", height: 1.65 m }");
            return;
        }
        SheetRoles.ColorIn heights = draft.roles().heights().get();
        String said = "heights: { lines: %s, color: \"%s\", height: %s m }"
                .formatted(file(heights.sheet().file()), heights.color(), DrawnView.SUPPOSED_M);
        if (draft.seen().fitted().isEmpty()) {
            line("# Lines of the colour " + heights.color() + " may be height lines, but "
                    + plain(draft.seen().trouble().orElse("they do not stand on floors")) + ":");
            line("# " + said);
            return;
        }
        FittedHeights fitted = draft.seen().fitted().get();
        row(said, heights.reason());
        line("# That they are 1.65 m tall is supposed: sizes and elevations below grow with it.");
        line("floors:");
        draft.seen()
                .elevations()
                .forEach((floor, elevation) -> row(
                        String.format(Locale.ROOT, "  %s: %.2f m", floor, elevation),
                        fitted.floor(floor).orElseThrow().lines().size() + " height lines stand on it"));
        FloorDoubts.of(fitted).forEach(doubt -> line("# Doubtful: " + plain(doubt.text()) + "."));
        camera(fitted);
    }

    private void camera(FittedHeights fitted) {
        Optional<SheetPoint> central = draft.seen().central();
        line(String.format(
                Locale.ROOT,
                "# The horizon is at y %.1f mm, %s, and the eye %.2f m above %s.",
                fitted.horizonMm(),
                central.isPresent()
                        ? "where lines that run away meet"
                        : String.format(Locale.ROOT, "give or take %.1f mm", fitted.horizonErrorMm()),
                fitted.floors().get(0).eyeHeightM(),
                fitted.floors().get(0).name()));
        String point = central.map(at -> String.format(Locale.ROOT, "principal-point: [%.1f, %.1f]", at.x(), at.y()))
                .orElse("");
        String lens = String.format(Locale.ROOT, "focal: %.0f mm", draft.lensMm());
        if (draft.twoPoints().isPresent()) {
            twoPoints(fitted, lens);
            return;
        }
        if (draft.range().isPresent()) {
            row(
                    "camera: { " + (central.isPresent() ? point + ", " : "") + lens + " }",
                    "the focal length is a guess: a normal lens");
        } else if (central.isPresent()) {
            row("camera: { " + point + " }", "where lines that run away meet");
        }
        line(
                "# Neither lines nor renders tell the focal length. Figures are of the right size without it, but shadows");
        line("# computed from the sun's angles need it: " + (draft.range().isPresent() ? "set" : "add")
                + " focal: MM or" + " field-of-view: DEGREES"
                + (draft.range().isPresent() ? ", and leave out near and far." : "."));
    }

    /** A view along neither of two directions of edges: the camera and what it rests on. */
    private void twoPoints(FittedHeights fitted, String lens) {
        double middle = draft.size().widthMm() / 2;
        row(
                String.format(
                        Locale.ROOT,
                        "camera: { principal-point: [%.1f, %.1f], %s, turn: %.1f deg }",
                        middle,
                        fitted.horizonMm(),
                        lens,
                        Math.toDegrees(draft.twoPoints().orElseThrow().turn())),
                draft.seen().twoPoints().stream()
                        .map(point -> String.format(
                                Locale.ROOT,
                                "%d edges meet at x %.1f mm",
                                point.lines(),
                                point.at().x()))
                        .collect(Collectors.joining(", ")));
        line(
                "# That rests on two things which the lines do not tell: that these edges run at a right angle to each other, and");
        line(
                "# that the view is centred on the middle of the sheet. If it is not, say what principal-point, focal and turn are.");
    }

    private void sun() {
        line("");
        Optional<DrawnSun.Found> found = draft.sun().found();
        found.ifPresent(this::sun);
        line(
                found.isPresent()
                        ? "# If you know where the sun of the renders stands, state that instead: its angles, or place and time:"
                        : "# The sun of the renders, for the shadows of figures; by its angles, by place and time, or by a drawn shadow:");
        line("# sun: { azimuth: 190, altitude: 47, north: 0 }");
        line("# sun: { place: [41.5, -30.25], at: 2026-06-21T15:00-02:00, north: 0 }");
        if (found.isEmpty()) {
            line("# sun: { sample: { foot: [X, Y], head: [X, Y], tip: [X, Y] } }");
            if (draft.best(PassKind.SHADOW).isPresent()) {
                line("# It was not read from the shadow pass: "
                        + plain(draft.sun().trouble()) + ".");
            }
        }
    }

    private void sun(DrawnSun.Found one) {
        row(
                String.format(
                        Locale.ROOT,
                        "sun: { sample: { foot: [%.2f, %.2f], head: [%.2f, %.2f], tip: [%.2f, %.2f] } }",
                        one.sample().foot().x(),
                        one.sample().foot().y(),
                        one.sample().head().x(),
                        one.sample().head().y(),
                        one.sample().tip().x(),
                        one.sample().tip().y()),
                shows(one));
        line(
                "# Shadows on floors come out right by it whatever the camera is. Its angles hold only if what is supposed of the");
        line(String.format(
                Locale.ROOT,
                "# camera is true, a focal length of %.0f mm: azimuth %.1f, clockwise from +Y, altitude %.1f, give or take %.1f degrees.",
                one.focalMm(),
                one.sun().direction().azimuthDeg(0),
                one.sun().direction().altitudeDeg(),
                one.sun().errorDeg()));
    }

    /** What a sun was read from. */
    static String shows(DrawnSun.Found one) {
        return "an estimate from the shadow pass: " + one.sun().onFloors() + " lines on floors and "
                + one.sun().onWalls() + " on walls show it";
    }

    private void pens() {
        line("");
        line(
                pens.byName().isEmpty()
                        ? "# pens: { NAME: { color: \"#RRGGBB\", width: 0.25 mm } }"
                        : "# Drawn in this order, the heavier over the lighter; roles are guesses.");
        if (!pens.byName().isEmpty()) {
            line("pens:");
        }
        pens.byName()
                .forEach((key, pen) -> row(
                        "  " + key + ": { color: \"" + pen.color() + "\", role: " + DraftPens.word(pen)
                                + (RECEDING.contains(pen.role()) ? ", ink: \"#505050\"" : "") + " }",
                        pen.reason()));
        line("");
        pens.cut()
                .ifPresentOrElse(
                        cut -> row(
                                "cut: { color: \"" + cut.color()
                                        + "\", outline: 0.7 mm, hatch: { angle: 45, spacing: 1.2 mm } }",
                                cut.reason()),
                        () -> line("# cut: { color: \"#000000\", outline: 0.7 mm }   # no colour looks like the cut"));
        line(
                pens.has(LineRole.BUILDING)
                        ? "profile: 0.5 mm"
                        : "# profile: { width: 0.5 mm, pens: NAME }   # the heavier line around what a pen draws");
        veils();
        line(
                "# clean-up: { duplicates: 0.05 mm, join: 0.1 mm, shortest: 0.2 mm, clutter: 0.1 mm }   # as it is if not said");
    }

    private void veils() {
        Optional<SheetRoles.ColorIn> trees = draft.roles().trees();
        Optional<PenSuggestion> glass = pens.first(LineRole.GLASS);
        Optional<PenSuggestion> neighbour = pens.first(LineRole.NEIGHBOUR);
        if (trees.isEmpty()) {
            line(
                    "# No sheet shows trees; to lay them over the building: veils: { trees: { lines: FILE, color: \"#RRGGBB\" } }");
        }
        if (trees.isEmpty() && glass.isEmpty() && neighbour.isEmpty()) {
            return;
        }
        line("veils:");
        neighbour.ifPresent(pen -> line("  neighbour-veil: { color: \"" + pen.color() + "\", opacity: 35 }"));
        glass.ifPresent(pen -> line("  glass-veil: { color: \"" + pen.color() + "\", opacity: 15 }"));
        trees.ifPresent(shown -> {
            boolean own = shown.sheet().file().equals(draft.roles().base().file());
            row(
                    "  trees: { " + (own ? "" : "lines: " + file(shown.sheet().file()) + ", ") + "color: \""
                            + shown.color() + "\", opacity: 40 }",
                    shown.reason());
        });
    }

    private void figures() {
        line("");
        line("# People: adumbrate has standing, walking, seated, child, with-bag, leaning and more.");
        Optional<SheetPoint> foot = draft.seen().fitted().flatMap(fitted -> fitted.floors().get(0).lines().stream()
                .max(Comparator.comparingDouble(HeightLine::heightMm))
                .map(HeightLine::foot));
        String at = foot.map(point -> String.format(Locale.ROOT, "[%.1f, %.1f]", point.x(), point.y()))
                .orElse("[X, Y]");
        String floor = draft.seen()
                .fitted()
                .map(fitted -> fitted.floors().get(0).name())
                .orElse("NAME");
        line("# figures:");
        line("#   - { outline: standing, foot: " + at + ", floor: " + floor + " }"
                + (foot.isPresent() ? "   # at the foot of a height line" : ""));
    }

    private void deliver() {
        line("");
        line("deliver:");
        boolean printed = draft.best(PassKind.SHADOW).isPresent()
                || draft.best(PassKind.OCCLUSION).isPresent();
        if (printed) {
            line("  underlay: out/underlay.tif");
        }
        line("  drawing: " + quoted("out/" + name + ".pdf"));
        line("  preview: out/preview.png");
    }

    private void row(String value, String comment) {
        line(String.format(Locale.ROOT, "%-58s # %s", value, plain(comment)));
    }

    private void line(String line) {
        text.append(line.stripTrailing()).append('\n');
    }

    private static String plain(String words) {
        return Shown.line(words.replaceAll("\\s+", " "));
    }

    private String file(Path file) {
        Path from = folder.toAbsolutePath().normalize();
        Path to = file.toAbsolutePath().normalize();
        String path = from.getRoot() != null && from.getRoot().equals(to.getRoot())
                ? from.relativize(to).toString()
                : to.toString();
        return quoted(path.replace('\\', '/'));
    }

    /** A YAML scalar: in quotes unless it is surely a plain word. */
    private static String quoted(String word) {
        if (word.matches("[A-Za-z][A-Za-z0-9._/-]*") && !word.matches("(?i)true|false|yes|no|on|off|null|y|n")) {
            return word;
        }
        return '"' + Shown.line(word.replace("\\", "\\\\").replace("\"", "\\\"")) + '"';
    }
}
