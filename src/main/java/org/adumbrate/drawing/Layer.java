package org.adumbrate.drawing;

import java.util.List;
import java.util.Optional;

/**
 * Marks that belong together: a layer of the drawing. Layers are drawn in the order in which they are given. Whoever
 * looks at the drawing may switch each on and off by its name.
 *
 * @param name what the layer is called
 * @param within the name of the layers that it is kept together with, which has no marks of its own; none for most.
 *     Switching that off hides all that are in it
 * @param shown false for a layer that is there and switched off: it shows when someone switches it on, and does not print
 * @param marks what is drawn, in drawing order
 */
public record Layer(String name, Optional<String> within, boolean shown, List<Mark> marks) {
    /** Copies the list. */
    public Layer {
        marks = List.copyOf(marks);
    }

    /** A layer that shows. */
    public Layer(String name, Optional<String> within, List<Mark> marks) {
        this(name, within, true, marks);
    }

    /** A layer that stands by itself. */
    public static Layer of(String name, List<? extends Mark> marks) {
        return new Layer(name, Optional.empty(), List.copyOf(marks));
    }

    /** The same layer kept together with others under a name. */
    public Layer within(String others) {
        return new Layer(name, Optional.of(others), shown, marks);
    }

    /** The same layer switched off. */
    public Layer hidden() {
        return new Layer(name, within, false, marks);
    }
}
