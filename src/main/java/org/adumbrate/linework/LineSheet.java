package org.adumbrate.linework;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Srgb;

/**
 * A vector line sheet as read from its file: what is seen of its strokes.
 *
 * @param file where it came from
 * @param page the size of its visible page
 * @param strokes its strokes in drawing order, less what areas hide that are painted over them
 * @param leftOut what it paints besides, which is not taken as lines, each kind once
 * @param hidden how much of its strokes is hidden
 * @param recovered how many of its strokes its file holds as filled shapes, or dash by dash
 * @param pages how many pages the file has, at least 1; only one is read, so more than one is worth telling
 * @param remarks what there is to say of how it was read
 */
public record LineSheet(
        Path file,
        SheetSize page,
        List<Stroke> strokes,
        List<LeftOut> leftOut,
        Hidden hidden,
        Recovered recovered,
        int pages,
        List<ReadingNote> remarks) {
    /** Copies the lists. */
    public LineSheet {
        strokes = List.copyOf(strokes);
        leftOut = List.copyOf(leftOut);
        remarks = List.copyOf(remarks);
    }

    /** A sheet of nothing but strokes that are all seen, from a file of a single page. */
    public LineSheet(Path file, SheetSize page, List<Stroke> strokes) {
        this(file, page, strokes, List.of(), Hidden.NOTHING, Recovered.NOTHING, 1, List.of());
    }

    /** The same under another name. */
    public LineSheet named(Path name) {
        return new LineSheet(name, page, strokes, leftOut, hidden, recovered, pages, remarks);
    }

    /** The same with strokes of some colours in others. */
    public LineSheet recolored(Map<Srgb, Srgb> colors) {
        List<Stroke> recolored = strokes.stream()
                .map(stroke -> stroke.in(colors.getOrDefault(stroke.color(), stroke.color())))
                .toList();
        return new LineSheet(file, page, recolored, leftOut, hidden, recovered, pages, remarks);
    }

    /** The same, with what there is to say of how it was read. */
    public LineSheet with(List<ReadingNote> told) {
        return new LineSheet(file, page, strokes, leftOut, hidden, recovered, pages, told);
    }

    /** How many marks it shows of which nothing is taken as a line: areas without an outline, texts, images and the like. */
    public int otherMarks() {
        return leftOut.stream()
                .filter(left -> left.kind().isWhollyLeftOut())
                .mapToInt(LeftOut::count)
                .sum();
    }
}
