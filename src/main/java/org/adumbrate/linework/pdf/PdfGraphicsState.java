package org.adumbrate.linework.pdf;

import java.awt.geom.AffineTransform;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.page.PenScale;
import org.adumbrate.linework.page.StrokeStyle;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;

/** As much of the graphics state (ISO 32000-1, 8.4) as strokes and areas depend on; lengths in user space. */
final class PdfGraphicsState {
    /** User space to mm of the page. */
    final AffineTransform toPage;

    private Clip<PagePoint> clip;
    private PdfMask mask = PdfMask.NONE;
    /** Whether a group that this lies in is masked so that it may show in part only. */
    private boolean halfShown;

    /** What the mask leaves of the clip; worked out when it is asked for. */
    private Optional<Clip<PagePoint>> seen = Optional.empty();

    PDColorSpace strokeSpace = PDDeviceGray.INSTANCE;
    /** Empty for a pattern, which has no colour of its own. */
    Optional<Srgb> strokeColor = Optional.of(Srgb.BLACK);

    double strokeAlpha = 1;
    PdfFillColor fill = PdfFillColor.BLACK;
    double fillAlpha = 1;
    /** Whether what is painted is laid over what is there, and not mixed with it (11.3.5). */
    boolean laidOver = true;

    /** In a group that is itself seen through, the number of its first stroke: what is painted in it hides nothing before. */
    int since;

    /** Whether colours are settled by what draws this, and those that the content states are passed over. */
    boolean uncolored;

    /** Whether a group is seen through so far that nothing of it is seen. */
    boolean unseen;

    /** The space of patterns to mm of the page: that of the page, or of the form that is being drawn (8.7.3.1). */
    AffineTransform patternsToPage;

    PdfTextState text = PdfTextState.INITIAL;
    double lineWidth = 1;
    double[] dashLengths = {};
    double dashPhase;
    LineCap cap = LineCap.BUTT;
    LineJoin join = LineJoin.MITER;

    PdfGraphicsState(AffineTransform toPage, Clip<PagePoint> clip) {
        this.toPage = new AffineTransform(toPage);
        this.clip = clip;
        this.patternsToPage = new AffineTransform(toPage);
    }

    PdfGraphicsState(PdfGraphicsState other) {
        this(other.toPage, other.clip);
        strokeSpace = other.strokeSpace;
        strokeColor = other.strokeColor;
        strokeAlpha = other.strokeAlpha;
        fill = other.fill;
        fillAlpha = other.fillAlpha;
        laidOver = other.laidOver;
        mask = other.mask;
        halfShown = other.halfShown;
        seen = other.seen;
        uncolored = other.uncolored;
        text = other.text;
        since = other.since;
        unseen = other.unseen;
        patternsToPage = other.patternsToPage;
        lineWidth = other.lineWidth;
        dashLengths = other.dashLengths;
        dashPhase = other.dashPhase;
        cap = other.cap;
        join = other.join;
    }

    /** Enters a form: patterns lie in its coordinates from now on. */
    void enterForm() {
        patternsToPage = new AffineTransform(toPage);
    }

    /** Takes the parameters that hold at the beginning of a page; what it is seen through stays. */
    void beginAnew(AffineTransform map) {
        toPage.setTransform(map);
        strokeSpace = PDDeviceGray.INSTANCE;
        strokeColor = Optional.of(Srgb.BLACK);
        fill = PdfFillColor.BLACK;
        text = PdfTextState.INITIAL;
        lineWidth = 1;
        dashLengths = new double[0];
        dashPhase = 0;
        cap = LineCap.BUTT;
        join = LineJoin.MITER;
        enterForm();
    }

    /** Everything is drawn in one colour from now on, whatever the content states. */
    void settleColor(Srgb color) {
        strokeColor = Optional.of(color);
        fill = PdfFillColor.of(color);
        uncolored = true;
    }

    /** Enters a group, which is painted as a whole and in which everything begins anew (11.6.6). */
    void enterGroup(int strokesSoFar) {
        if (!hides()) {
            since = strokesSoFar;
        }
        unseen |= fillAlpha == 0;
        fillAlpha = strokeAlpha = 1;
        laidOver = true;
        clip = seen();
        halfShown |= mask.half();
        mask = PdfMask.NONE;
        seen = Optional.empty();
    }

    /** Narrows the clip to what lies within an outline too. */
    void clipTo(VectorPath<PagePoint> outline, FillRule rule) {
        clip = clip.within(outline, rule);
        seen = Optional.empty();
    }

    /** Puts a mask in the place of the one that was there. */
    void maskBy(PdfMask other) {
        mask = other;
        seen = Optional.empty();
    }

    PdfMask mask() {
        return mask;
    }

    /** Whether what is painted now may show in part only. */
    boolean isHalfShown() {
        return halfShown || mask.half();
    }

    /** Where marks can be seen, masks left aside. */
    Clip<PagePoint> clip() {
        return clip;
    }

    /** Where marks can be seen. */
    Clip<PagePoint> seen() {
        if (mask.isNone()) {
            return clip;
        }
        if (seen.isEmpty()) {
            seen = Optional.of(mask.of(clip));
        }
        return seen.get();
    }

    /** Whether what is stroked now is seen, in a colour of its own. */
    boolean isStrokeTaken() {
        return strokeColor.isPresent() && strokeAlpha > 0;
    }

    /** Whether an area painted now hides what lies behind it. */
    boolean hides() {
        return fillAlpha >= 1 && laidOver && mask.isNone();
    }

    /** How a stroke in a colour looks now; its width and dashes grow as areas do, by the root. */
    StrokeStyle style(Srgb color) {
        double scale = pen().mean();
        return new StrokeStyle(color, lineWidth * scale, dash(scale), cap, join);
    }

    /** What becomes of a round pen on the page. */
    PenScale pen() {
        return PenScale.of(toPage);
    }

    private Dash dash(double scale) {
        double sum = DoubleStream.of(dashLengths).sum();
        boolean draws = sum > 0 && DoubleStream.of(dashLengths).allMatch(length -> length >= 0);
        if (!draws) {
            return Dash.NONE;
        }
        List<Double> lengths = DoubleStream.of(dashLengths)
                .map(length -> length * scale)
                .boxed()
                .toList();
        return new Dash(lengths, dashPhase * scale);
    }

    /** The line cap of a number (8.4.3.3). */
    static LineCap cap(double number) {
        return switch ((int) number) {
            case 1 -> LineCap.ROUND;
            case 2 -> LineCap.PROJECTING;
            default -> LineCap.BUTT;
        };
    }

    /** The line join of a number (8.4.3.4). */
    static LineJoin join(double number) {
        return switch ((int) number) {
            case 1 -> LineJoin.ROUND;
            case 2 -> LineJoin.BEVEL;
            default -> LineJoin.MITER;
        };
    }
}
