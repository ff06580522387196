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
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.page.StrokeStyle;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;

/** As much of the graphics state (ISO 32000-1, 8.4) as a stroke depends on; lengths in user space. */
final class PdfGraphicsState {
    /** User space to mm of the page. */
    final AffineTransform toPage;

    Clip<PagePoint> clip;
    PDColorSpace strokeSpace = PDDeviceGray.INSTANCE;
    /** Empty for a pattern, which has no colour of its own. */
    Optional<Srgb> strokeColor = Optional.of(Srgb.BLACK);

    double strokeAlpha = 1;
    double lineWidth = 1;
    double[] dashLengths = {};
    double dashPhase;
    LineCap cap = LineCap.BUTT;
    LineJoin join = LineJoin.MITER;

    PdfGraphicsState(AffineTransform toPage, Clip<PagePoint> clip) {
        this.toPage = new AffineTransform(toPage);
        this.clip = clip;
    }

    PdfGraphicsState(PdfGraphicsState other) {
        this(other.toPage, other.clip);
        strokeSpace = other.strokeSpace;
        strokeColor = other.strokeColor;
        strokeAlpha = other.strokeAlpha;
        lineWidth = other.lineWidth;
        dashLengths = other.dashLengths;
        dashPhase = other.dashPhase;
        cap = other.cap;
        join = other.join;
    }

    /** How a stroke in a colour looks now; its width and dashes grow as areas do, by the root. */
    StrokeStyle style(Srgb color) {
        double scale = Math.sqrt(Math.abs(toPage.getDeterminant()));
        return new StrokeStyle(color, lineWidth * scale, dash(scale), cap, join);
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
