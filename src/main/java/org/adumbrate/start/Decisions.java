package org.adumbrate.start;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.adumbrate.perspective.FittedHeights;
import org.adumbrate.start.StartResult.Decision;

/** Tells in a few lines what a draft decided and what it left open. */
final class Decisions {
    private final Draft draft;
    private final List<Decision> decided = new ArrayList<>();
    private final List<Decision> open = new ArrayList<>();

    private Decisions(Draft draft) {
        this.draft = draft;
    }

    static StartResult of(Draft draft, Path file) {
        Decisions telling = new Decisions(draft);
        telling.lines();
        telling.passes();
        telling.perspective();
        telling.sun();
        draft.unused().forEach(one -> telling.open.add(new Decision("not used", name(one.file()), one.reason())));
        return new StartResult(file, telling.decided, telling.open);
    }

    private void sun() {
        draft.sun()
                .found()
                .ifPresentOrElse(
                        one -> decided.add(new Decision("sun", "by a shadow on the sheet", DraftText.shows(one))),
                        () -> open.add(new Decision("sun", "none", draft.sun().trouble())));
    }

    private static String name(Path file) {
        return file.getFileName().toString();
    }

    private void lines() {
        SheetRoles roles = draft.roles();
        decided.add(new Decision(
                "lines",
                name(roles.base().file()),
                "of the line sheets, it has the most colours that the others have too"));
        decided.add(new Decision(
                "size",
                PageName.of(roles.base().page()).text(),
                "its page is " + roles.base().page()));
        roles.trees()
                .ifPresentOrElse(
                        trees -> decided.add(new Decision(
                                "veils.trees", name(trees.sheet().file()) + " " + trees.color(), trees.reason())),
                        () -> open.add(new Decision("veils.trees", "none", "no colour looks like planting")));
        DraftPens pens = DraftPens.of(roles);
        pens.byName()
                .forEach((key, pen) ->
                        decided.add(new Decision("pens." + key, pen.color().toString(), pen.reason())));
        pens.cut()
                .ifPresentOrElse(
                        cut -> decided.add(new Decision("cut", cut.color().toString(), cut.reason())),
                        () -> open.add(new Decision("cut", "none", "no colour is black and in long pieces")));
    }

    private void passes() {
        for (PassKind kind : List.of(PassKind.SHADOW, PassKind.OCCLUSION, PassKind.DEPTH)) {
            List<PassFile> all = draft.all(kind);
            String key = "passes." + kind.word();
            if (all.isEmpty()) {
                open.add(new Decision(key, "none", "no raster looks like it"));
                continue;
            }
            PassFile best = all.get(0);
            boolean used = kind != PassKind.DEPTH || draft.range().isPresent();
            (used ? decided : open)
                    .add(new Decision(
                            key,
                            name(best.file()),
                            best.guess().reason() + (used ? "" : "; its near and far are not known")));
            for (PassFile other : all.subList(1, all.size())) {
                open.add(new Decision(
                        key,
                        "or " + name(other.file()),
                        "it is one too"
                                + (other.look().drawn() > 1.5 * best.look().drawn()
                                        ? ", with edges drawn into it"
                                        : "")));
            }
        }
        for (PassFile pass : draft.passes()) {
            if (!pass.placement().aligned()) {
                open.add(new Decision(
                        "not used", name(pass.file()), pass.placement().message()));
            } else if (pass.guess().kind() == PassKind.UNKNOWN) {
                open.add(new Decision(
                        "undecided", name(pass.file()), pass.guess().reason()));
            }
        }
    }

    private void perspective() {
        if (draft.roles().heights().isEmpty()) {
            open.add(new Decision("heights", "none", "no colour is uprights of one height under a horizon"));
            return;
        }
        SheetRoles.ColorIn heights = draft.roles().heights().get();
        String choice = name(heights.sheet().file()) + " " + heights.color();
        if (draft.seen().fitted().isEmpty()) {
            open.add(new Decision("heights", choice, draft.seen().trouble().orElse("")));
            return;
        }
        FittedHeights fitted = draft.seen().fitted().get();
        decided.add(new Decision("heights", choice, heights.reason()));
        decided.add(new Decision(
                "floors",
                draft.seen().elevations().entrySet().stream()
                        .map(floor -> String.format(Locale.ROOT, "%s at %.2f m", floor.getKey(), floor.getValue()))
                        .collect(Collectors.joining(", ")),
                String.format(Locale.ROOT, "equal heights obey one horizon at y %.1f mm", fitted.horizonMm())));
        draft.seen()
                .central()
                .ifPresentOrElse(
                        at -> decided.add(new Decision(
                                "camera.principal-point",
                                String.format(Locale.ROOT, "[%.1f, %.1f]", at.x(), at.y()),
                                "lines that run away meet there")),
                        () -> open.add(new Decision(
                                "camera.principal-point",
                                "the middle of the sheet",
                                "no one point of the horizon is where lines meet")));
        open.add(
                new Decision("heights.height", DrawnView.SUPPOSED_M + " m", "a drawing does not tell; it is supposed"));
        open.add(draft.twoPoints()
                .map(told -> new Decision(
                        "camera.focal",
                        String.format(
                                Locale.ROOT, "%.1f mm, turn %.1f deg", told.focalMm(), Math.toDegrees(told.turn())),
                        "edges in two directions tell it, if these are at a right angle and the view is centred on the"
                                + " sheet's middle"))
                .orElseGet(() -> new Decision("camera.focal", "none", "neither lines nor renders tell it")));
    }
}
