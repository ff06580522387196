package org.adumbrate.sheetfile;

import java.nio.file.Path;

/** What shows a figure, a plant or a bird. */
public sealed interface Outline permits Outline.Shipped, Outline.Drawn {
    /**
     * An outline that comes with the program; whether there is one of that name is not known here.
     *
     * @param name its name
     */
    record Shipped(String name) implements Outline {}

    /**
     * An outline of the user's own.
     *
     * @param file the SVG that shows it; its origin is the foot point
     */
    record Drawn(Path file) implements Outline {}
}
