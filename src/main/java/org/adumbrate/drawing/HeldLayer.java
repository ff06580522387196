package org.adumbrate.drawing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A layer whose paints are ready to be drawn.
 *
 * @param layer the layer
 * @param paints those that leave a trace, in drawing order; none where the layer is not shown
 * @param inks each of them made ready
 */
record HeldLayer(Layer layer, List<Paint> paints, List<Inks> inks) {
    /**
     * Layers made ready; what is among others already is not made again.
     *
     * @param tiles what they are drawn on
     */
    static List<HeldLayer> all(List<Layer> layers, List<HeldLayer> known, InkedLayers tiles) {
        Map<String, List<HeldLayer>> byName = new HashMap<>();
        known.forEach(held -> byName.computeIfAbsent(held.layer.name(), name -> new ArrayList<>())
                .add(held));
        List<HeldLayer> all = new ArrayList<>();
        for (Layer layer : layers) {
            all.add(of(layer, byName.getOrDefault(layer.name(), List.of()), tiles));
        }
        return all;
    }

    /** The very layer is looked for: comparing all that an equal one draws could cost as much as making it ready. */
    @SuppressWarnings("ReferenceEquality")
    private static HeldLayer of(Layer layer, List<HeldLayer> known, InkedLayers tiles) {
        for (HeldLayer held : known) {
            if (held.layer == layer) {
                return held;
            }
        }
        List<Paint> paints = layer.shown() ? Paint.of(layer) : List.of();
        List<Inks> inks = new ArrayList<>();
        for (Paint paint : paints) {
            inks.add(known.stream()
                    .flatMap(held -> held.found(paint).stream())
                    .findFirst()
                    .orElseGet(() -> tiles.inks(paint, alike(paint, known))));
        }
        return new HeldLayer(layer, paints, inks);
    }

    private Optional<Inks> found(Paint paint) {
        for (int k = 0; k < paints.size(); k++) {
            if (paints.get(k).isSame(paint)) {
                return Optional.of(inks.get(k));
            }
        }
        return Optional.empty();
    }

    /** Inks of the same paths drawn otherwise. */
    private static Optional<Inks> alike(Paint paint, List<HeldLayer> known) {
        for (HeldLayer held : known) {
            for (int k = 0; k < held.paints.size(); k++) {
                if (held.paints.get(k).hasSamePaths(paint)) {
                    return Optional.of(held.inks.get(k));
                }
            }
        }
        return Optional.empty();
    }
}
