package org.adumbrate.drawing;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;

/**
 * Writes paint as a content stream. Many lines share one path object, each as a subpath of its own, so that files stay
 * small and an editor can still take them apart; a fill is one path object. Coordinates are exact to a third of a
 * micrometre.
 */
final class PdfPaint implements VectorPath.Visitor {
    /** Enough to make the painting operators vanish among the lines, few enough for editors. */
    private static final int RUNS_TO_A_PATH = 500;

    private static final int POINT_DECIMALS = 3;
    private static final int STATE_DECIMALS = 4;

    private static final int BUFFER = 1 << 15;

    private final OutputStream out;
    private final double heightMm;
    private final StringBuilder text = new StringBuilder();
    private final int runsToAPath;
    private final String painting;
    private int runs;

    private PdfPaint(Paint paint, double heightMm, OutputStream out) {
        this.out = out;
        this.heightMm = heightMm;
        this.runsToAPath = paint.isFill() ? Integer.MAX_VALUE : RUNS_TO_A_PATH;
        this.painting = paint.isFill() ? "f" : "S";
    }

    /** Writes what puts a paint on a sheet, but for its opacity; leaves the graphics state changed. */
    static void write(Paint paint, SheetSize sheet, OutputStream out) throws IOException {
        PdfPaint content = new PdfPaint(paint, sheet.heightMm(), out);
        content.state(color(paint.color(), paint.isFill()));
        paint.pen().ifPresent(content::pen);
        for (VectorPath<SheetPoint> path : paint.paths()) {
            path.visit(content);
            content.flush(BUFFER);
        }
        content.paint();
        content.flush(0);
    }

    /** Lets go of what has been written, if it is more than so much. */
    private void flush(int more) throws IOException {
        if (text.length() > more) {
            out.write(text.toString().getBytes(StandardCharsets.US_ASCII));
            text.setLength(0);
        }
    }

    private void pen(Pen pen) {
        state(points(pen.widthMm()) + " w");
        state(cap(pen.cap()) + " J");
        state(join(pen.join()) + " j");
        List<Double> dashes = pen.dash().lengthsMm();
        if (!dashes.isEmpty()) {
            String lengths =
                    String.join(" ", dashes.stream().map(PdfPaint::points).toList());
            state("[" + lengths + "] " + points(pen.dash().phaseMm()) + " d");
        }
    }

    private void state(String operation) {
        text.append(operation).append('\n');
    }

    private static String color(Srgb color, boolean fill) {
        if (color.red() == color.green() && color.green() == color.blue()) {
            return component(color.red()) + (fill ? " g" : " G");
        }
        return component(color.red()) + " " + component(color.green()) + " " + component(color.blue())
                + (fill ? " rg" : " RG");
    }

    private static String component(int level) {
        return CompactNumber.of(level / 255.0, STATE_DECIMALS);
    }

    private static String points(double mm) {
        return CompactNumber.of(mm / Length.MM_PER_POINT, STATE_DECIMALS);
    }

    private static int cap(LineCap cap) {
        return switch (cap) {
            case BUTT -> 0;
            case ROUND -> 1;
            case PROJECTING -> 2;
        };
    }

    private static int join(LineJoin join) {
        return switch (join) {
            case MITER -> 0;
            case ROUND -> 1;
            case BEVEL -> 2;
        };
    }

    @Override
    public void moveTo(double x, double y) {
        if (runs == runsToAPath) {
            paint();
        }
        runs++;
        point(x, y);
        text.append("m\n");
    }

    @Override
    public void lineTo(double x, double y) {
        point(x, y);
        text.append("l\n");
    }

    @Override
    public void curveTo(double x1, double y1, double x2, double y2, double x, double y) {
        point(x1, y1);
        point(x2, y2);
        point(x, y);
        text.append("c\n");
    }

    @Override
    public void close() {
        text.append("h\n");
    }

    private void paint() {
        if (runs > 0) {
            text.append(painting).append('\n');
            runs = 0;
        }
    }

    private void point(double x, double y) {
        CompactNumber.append(text, x / Length.MM_PER_POINT, POINT_DECIMALS).append(' ');
        CompactNumber.append(text, (heightMm - y) / Length.MM_PER_POINT, POINT_DECIMALS)
                .append(' ');
    }
}
