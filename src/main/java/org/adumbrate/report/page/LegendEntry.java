package org.adumbrate.report.page;

import java.util.List;
import org.adumbrate.drawing.Mark;
import org.adumbrate.geometry.SheetSize;

/**
 * A line of the legend.
 *
 * @param part what it belongs to
 * @param name what it is called
 * @param depicts what it depicts, in words
 * @param look weight, dash, ink or fill, in words
 * @param lines how many lines it draws
 * @param lengthMm how long they are together
 * @param sample a piece of it at true size, on {@link #SAMPLE}
 */
public record LegendEntry(
        Group part, String name, String depicts, String look, int lines, double lengthMm, List<Mark> sample) {
    /** The parts of the legend, in their order. */
    public enum Group {
        /** What the pens draw. */
        LINES("Lines"),
        /** The section cut. */
        CUT("The cut"),
        /** Fills that cover what is behind them: veils, people, plants, birds. */
        FILLS("Veils and entourage");

        private final String title;

        Group(String title) {
            this.title = title;
        }

        String title() {
            return title;
        }
    }

    /** The size of a sample. */
    public static final SheetSize SAMPLE = new SheetSize(30, 9);

    /** Copies the list. */
    public LegendEntry {
        sample = List.copyOf(sample);
    }
}
