package org.adumbrate.linework.pens;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.adumbrate.geometry.Srgb;

/** What the strokes themselves say. The limits hold between what exports of models show, and settle no doubtful case. */
final class StrokeClues {
    private static final double NEARLY_ALL = 0.95;
    private static final double NEARLY_NONE = 0.05;

    /** Black or nearly so, as the largest component of 255. */
    private static final int DARK = 40;

    /** Pieces are long that are so many times as long as those of the colour with the most line. */
    private static final double LONG = 1.5;

    /** A colour with less saturation is a grey, whatever its hue. */
    private static final double COLOURFUL = 0.35;

    private static final int FEW = 30;

    private final List<ColorLook> looks;
    private final Map<Srgb, Clue> clues;

    private StrokeClues(List<ColorLook> looks, Map<Srgb, Clue> clues) {
        this.looks = looks;
        this.clues = clues;
    }

    /**
     * Adds a clue for each colour that has none yet: first height lines, the cut and the building are looked for, then each of the
     * others is judged beside the building.
     *
     * @param looks the colours, the longest first
     */
    static void complete(List<ColorLook> looks, Map<Srgb, Clue> clues) {
        StrokeClues strokes = new StrokeClues(looks, clues);
        strokes.open().toList().forEach(strokes::heightLines);
        if (!strokes.has(LineRole.CUT)) {
            strokes.cut();
        }
        if (!strokes.has(LineRole.BUILDING)) {
            strokes.building();
        }
        double typicalMm = looks.stream()
                .filter(look -> strokes.is(look, LineRole.BUILDING))
                .mapToDouble(ColorLook::meanMm)
                .findFirst()
                .orElse(0);
        strokes.open().toList().forEach(look -> clues.put(look.color(), strokes.other(look, typicalMm)));
    }

    private boolean is(ColorLook look, LineRole role) {
        return clues.containsKey(look.color()) && clues.get(look.color()).role() == role;
    }

    private boolean has(LineRole role) {
        return clues.values().stream().anyMatch(clue -> clue.role() == role);
    }

    /** The colours without a clue, the longest first. */
    private Stream<ColorLook> open() {
        return looks.stream().filter(look -> !clues.containsKey(look.color()));
    }

    private void heightLines(ColorLook look) {
        if (look.uprightShare() >= NEARLY_ALL) {
            // where the horizon lies is found out exactly elsewhere
            Horizon.of(look.uprights())
                    .ifPresent(y -> clues.put(
                            look.color(), new Clue(LineRole.HEIGHT_LINES, "uprights of one height under one horizon")));
        }
    }

    private void cut() {
        open().filter(look -> look.brightness() <= DARK)
                .min(Comparator.comparingInt(ColorLook::brightness))
                .flatMap(this::cut)
                .ifPresent(clue -> clues.put(clue.getKey(), clue.getValue()));
    }

    private Optional<Map.Entry<Srgb, Clue>> cut(ColorLook black) {
        double othersMm = open().filter(look -> !look.color().equals(black.color()))
                .mapToDouble(ColorLook::meanMm)
                .findFirst()
                .orElse(Double.POSITIVE_INFINITY);
        if (black.meanMm() > LONG * othersMm) {
            return Optional.of(Map.entry(
                    black.color(), clue(LineRole.CUT, "the blackest, in long pieces of %.0f mm", black.meanMm())));
        }
        // curves come in short pieces
        return Enclosure.shareOf(black).stream()
                .boxed()
                .findFirst()
                .map(share -> Map.entry(
                        black.color(),
                        clue(
                                LineRole.CUT,
                                "the blackest, and no other line shows in what it encloses, %.0f %% of the sheet",
                                100 * share)));
    }

    private void building() {
        open().findFirst()
                .ifPresent(look -> clues.put(
                        look.color(), clue(LineRole.BUILDING, "more line than any other, %.0f mm", look.lengthMm())));
    }

    /** The role of a colour that leads in nothing. */
    private Clue other(ColorLook look, double typicalMm) {
        boolean colourful = look.saturation() > COLOURFUL;
        if (colourful && look.hue() > 75 && look.hue() < 165) {
            return new Clue(LineRole.PLANTING, "it is green");
        }
        if (look.uprightShare() <= NEARLY_NONE && look.strokes() >= FEW && look.levelShare() >= 0.3) {
            return clue(LineRole.PAVING, "%d strokes of which hardly any stands upright", look.strokes());
        }
        if (look.uprightShare() <= NEARLY_NONE) {
            return clue(LineRole.GROUND, "%d strokes, sloping or level", look.strokes());
        }
        if (colourful
                && look.hue() > 170
                && look.hue() < 205
                && look.lengthMm() < 0.2 * looks.get(0).lengthMm()) {
            return new Clue(LineRole.GLASS, "it is light blue and there is little of it");
        }
        if (look.strokes() < FEW && look.meanMm() > 1.2 * typicalMm) {
            return clue(LineRole.NEIGHBOUR, "few strokes, long ones of %.0f mm", look.meanMm());
        }
        if (look.strokes() >= FEW && look.meanMm() < 0.7 * typicalMm) {
            return clue(LineRole.FURNITURE, "%d short strokes of %.1f mm", look.strokes(), look.meanMm());
        }
        return new Clue(LineRole.OTHER, "nothing tells what it depicts");
    }

    private static Clue clue(LineRole role, String reason, Object... numbers) {
        return new Clue(role, String.format(Locale.ROOT, reason, numbers));
    }
}
