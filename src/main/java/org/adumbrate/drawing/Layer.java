package org.adumbrate.drawing;

import java.util.List;
import java.util.Optional;

/**
 * Marks that belong together: a layer of the drawing. Layers are drawn in the order in which they are given.
 *
 * @param name what the layer is called
 * @param within the name of the layers that it is kept together with, which has no marks of its own; none for most
 * @param marks what is drawn, in drawing order
 */
public record Layer(String name, Optional<String> within, List<Mark> marks) {
    /** Copies the list. */
    public Layer {
        marks = List.copyOf(marks);
    }

    /** A layer that stands by itself. */
    public static Layer of(String name, List<? extends Mark> marks) {
        return new Layer(name, Optional.empty(), List.copyOf(marks));
    }
}
