package org.adumbrate.linework.page;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.Stroke;
import org.adumbrate.linework.clip.Clip;

/** Gathers what a reader finds on a page: visible strokes as they are, anything else by number. */
public final class StrokeCollector {
    /** More than any drawing needs: 200 MB of strokes, and at most as much again of what they consist of. */
    public static final int MOST_STROKES = 1_000_000;

    private static final int MOST_SEGMENTS = 4_000_000;

    private final Path file;
    private final SheetSize page;
    private final List<Stroke> strokes = new ArrayList<>();
    private long segments;
    private int outside;
    private int otherMarks;

    public StrokeCollector(Path file, SheetSize page) {
        this.file = file;
        this.page = page;
    }

    /** All of the page. */
    public Clip<PagePoint> wholePage() {
        return Clip.rectangle(0, 0, page.widthMm(), page.heightMm());
    }

    /** Takes a stroked path, less what the clip hides. */
    public void stroke(VectorPath<PagePoint> path, Clip<PagePoint> clip, StrokeStyle style, Optional<String> layer)
            throws InputFault {
        if (path.isEmpty()) {
            return;
        }
        VectorPath<PagePoint> visible = clip.visible(path);
        if (visible.isEmpty()) {
            outside++;
            return;
        }
        strokes.add(
                new Stroke(visible, style.color(), style.widthMm(), style.dash(), style.cap(), style.join(), layer));
        segments += visible.segments() + style.dash().lengthsMm().size();
        if (strokes.size() > MOST_STROKES || segments > MOST_SEGMENTS) {
            throw new InputFault(
                    file,
                    "holds more than " + MOST_STROKES + " strokes or " + MOST_SEGMENTS + " pieces and dashes of them",
                    "export fewer objects at a time");
        }
    }

    /** Counts a mark that is not a line. */
    public void otherMark() {
        otherMarks++;
    }

    /** The sheet, unless it holds no line at all. */
    public LineSheet sheet(int pages) throws InputFault {
        if (strokes.isEmpty()) {
            throw new InputFault(file, emptiness(), "export it again as lines, not as an image or as filled shapes");
        }
        return new LineSheet(file, page, strokes, otherMarks, pages);
    }

    private String emptiness() {
        if (outside > 0) {
            return "shows no line: all " + outside + " strokes lie outside the visible page of " + page;
        }
        return otherMarks > 0
                ? "shows no line, only " + otherMarks + " filled areas, texts or images"
                : "shows no line at all";
    }
}
