package org.adumbrate.prepare.lines;

import java.util.List;
import java.util.Map;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.PageFit;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.registration.LinePattern;

/**
 * A line sheet laid onto the sheet.
 *
 * @param lines the strokes, on their page
 * @param sheet the sheet's size
 * @param toSheet from the page to the sheet
 */
public record LaidLines(LineSheet lines, SheetSize sheet, Affine<PagePoint, SheetPoint> toSheet) {
    /** The largest that a PDF page may have, and so the largest that a sheet file may ask for. */
    private static final double LARGEST_MM = 14_400 * Length.MM_PER_POINT;

    /**
     * Lays a line sheet onto its sheet.
     *
     * @throws Refusal if the page has another ratio than the sheet and the fit does not allow that, or is no paper's size
     */
    public static LaidLines of(LineSheet lines, SheetSize sheet, PageFit fit) throws Refusal {
        if (Math.max(sheet.widthMm(), sheet.heightMm()) > LARGEST_MM) {
            throw new Refusal(
                    lines.file() + ": its page of " + sheet + " is larger than any paper; say how large to print");
        }
        try {
            return new LaidLines(lines, sheet, fit.onto(lines.page(), sheet));
        } catch (Refusal reason) {
            throw new Refusal(lines.file() + ": " + reason.getMessage());
        }
    }

    /** The same with strokes of some colours taken for those of others. */
    LaidLines recolored(Map<Srgb, Srgb> colors) {
        return colors.isEmpty() ? this : new LaidLines(lines.recolored(colors), sheet, toSheet);
    }

    /** The strokes' paths on the sheet. */
    List<VectorPath<SheetPoint>> paths() {
        return lines.strokes().stream()
                .map(stroke -> stroke.path().transform(toSheet))
                .toList();
    }

    /** What passes are placed by. */
    public LinePattern pattern() {
        return LinePattern.of(paths());
    }

    /** The same, made ready when it is needed. */
    public PlacingLines placing(Run run) {
        List<Object> content = List.of(lines.file(), sheet, toSheet);
        return new PlacingLines(content, () -> run.of(Part.PATTERN, LinePattern.class, content, this::pattern));
    }
}
