package org.adumbrate.drawing;

import java.util.List;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;

/** What a drawing consists of. */
public sealed interface Mark {
    /**
     * What asked for it: a key path of the sheet file, such as {@code pens.building} or {@code figures[3]}; empty where
     * nobody did.
     */
    String key();

    /**
     * Lines drawn with one pen.
     *
     * @param key as {@link Mark#key} has it
     * @param pen what they are drawn with
     * @param paths the lines, in drawing order
     */
    record Lines(String key, Pen pen, List<VectorPath<SheetPoint>> paths) implements Mark {
        /** Copies the list. */
        public Lines {
            paths = List.copyOf(paths);
        }

        /** Lines that nobody asked for by a key. */
        public Lines(Pen pen, List<VectorPath<SheetPoint>> paths) {
            this("", pen, paths);
        }
    }

    /**
     * A region filled with one colour.
     *
     * @param key as {@link Mark#key} has it
     * @param fill the colour
     * @param opacity how much it covers: 0 (nothing) to 1 (all)
     * @param region what is filled
     */
    record Area(String key, Srgb fill, double opacity, Region<SheetPoint> region) implements Mark {
        /** @throws IllegalArgumentException if the opacity is outside 0 to 1 */
        public Area {
            if (!(opacity >= 0 && opacity <= 1)) {
                throw new IllegalArgumentException("opacity " + opacity + " is not between 0 and 1");
            }
        }

        /** A region that nobody asked for by a key. */
        public Area(Srgb fill, double opacity, Region<SheetPoint> region) {
            this("", fill, opacity, region);
        }
    }
}
