package org.adumbrate.linework.pdf;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.Optional;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.page.PathTracer;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;

/** Fills areas with the strokes of tiling patterns (ISO 32000-1, 8.7.3): a hatch is often given as one. */
final class PdfTiles {
    /** Tiles of one area; a hatch of the finest pattern over a sheet of A0 has as many. */
    private static final double MOST_TILES = 50_000;

    /** Strokes that tiles of one area draw all told. */
    private static final double MOST_STROKES = 300_000;

    private static final int UNCOLORED = 2;
    private static final COSName X_STEP = COSName.getPDFName("XStep");
    private static final COSName Y_STEP = COSName.getPDFName("YStep");

    private final PdfContext context;
    private final PdfColors colors;
    private final PdfForms contents;
    private final PdfInPlace inPlace;

    PdfTiles(PdfContext context, PdfColors colors, PdfForms contents, PdfInPlace inPlace) {
        this.context = context;
        this.colors = colors;
        this.contents = contents;
        this.inPlace = inPlace;
    }

    /** A pattern's cell and where it is repeated, in its own coordinates. */
    private record Cell(COSStream content, AffineTransform toPage, Rectangle2D box, double xStep, double yStep) {
        /** The first and the last tile across and down that reach into a rectangle. */
        int[] reach(Rectangle2D area) {
            return new int[] {
                (int) Math.ceil((area.getMinX() - box.getMaxX()) / xStep - 1e-9),
                (int) Math.floor((area.getMaxX() - box.getMinX()) / xStep + 1e-9),
                (int) Math.ceil((area.getMinY() - box.getMaxY()) / yStep - 1e-9),
                (int) Math.floor((area.getMaxY() - box.getMinY()) / yStep + 1e-9)
            };
        }
    }

    /**
     * Draws a pattern's tiles within an area, if they have strokes.
     *
     * @return whether they were drawn; not if they have none, or far too many
     * @throws IOException if the pattern is damaged
     */
    boolean fill(VectorPath<PagePoint> path, FillRule rule, COSDictionary pattern, PdfFillColor fill)
            throws IOException {
        Optional<Cell> cell = cell(pattern);
        Optional<Rectangle2D> area = cell.flatMap(known -> seen(path, known.toPage()));
        if (area.isEmpty()) {
            return false;
        }
        PdfScan scan = PdfScan.of(contents.content(cell.get().content()));
        int[] reach = cell.get().reach(area.get());
        double tiles = (reach[1] - reach[0] + 1.0) * (reach[3] - reach[2] + 1.0);
        boolean draws = scan.strokes() > 0 || !scan.drawn().isEmpty();
        if (!draws || tiles > MOST_TILES || tiles * Math.max(1, scan.strokes()) > MOST_STROKES) {
            return false;
        }
        Optional<Srgb> color = Optional.empty();
        if (pattern.getInt(COSName.PAINT_TYPE, 1) == UNCOLORED) {
            color = colors.ofUncolored(fill);
            if (color.isEmpty()) {
                return false;
            }
        }
        draw(cell.get(), reach, path, rule, color);
        return true;
    }

    private void draw(Cell cell, int[] reach, VectorPath<PagePoint> path, FillRule rule, Optional<Srgb> color)
            throws IOException {
        Optional<COSDictionary> resources = Optional.ofNullable(cell.content().getCOSDictionary(COSName.RESOURCES));
        context.save();
        context.state().clipTo(path, rule);
        for (int row = reach[2]; row <= reach[3]; row++) {
            for (int column = reach[0]; column <= reach[1]; column++) {
                AffineTransform toPage = new AffineTransform(cell.toPage());
                toPage.translate(column * cell.xStep(), row * cell.yStep());
                inPlace.run(cell.content(), resources, state -> enter(state, toPage, cell.box(), color));
            }
        }
        context.restoreTo(context.depth() - 1);
    }

    /** A cell begins as a page does, but for what it is seen through. */
    private static void enter(PdfGraphicsState state, AffineTransform toPage, Rectangle2D box, Optional<Srgb> color) {
        state.beginAnew(toPage);
        color.ifPresent(state::settleColor);
        PathTracer outline = new PathTracer();
        outline.drawThrough(toPage);
        outline.rectangle(box.getX(), box.getY(), box.getWidth(), box.getHeight());
        state.clipTo(outline.take(), FillRule.NON_ZERO);
    }

    private Optional<Cell> cell(COSDictionary pattern) {
        double[] corners = PdfShadings.numbers(pattern, COSName.BBOX);
        double xStep = Math.abs(pattern.getFloat(X_STEP, 0));
        double yStep = Math.abs(pattern.getFloat(Y_STEP, 0));
        AffineTransform toPage = new AffineTransform(context.state().patternsToPage);
        toPage.concatenate(PdfShadings.matrix(pattern));
        if (!(pattern instanceof COSStream content) || corners.length != 4 || xStep == 0 || yStep == 0) {
            return Optional.empty();
        }
        Rectangle2D box = new Rectangle2D.Double();
        box.setFrameFromDiagonal(corners[0], corners[1], corners[2], corners[3]);
        return Optional.of(new Cell(content, toPage, box, xStep, yStep));
    }

    /** What of an area may be seen, as a rectangle in a pattern's coordinates. */
    private Optional<Rectangle2D> seen(VectorPath<PagePoint> path, AffineTransform toPage) {
        try {
            Optional<Extent> extent = context.state().seen().reach(path);
            AffineTransform fromPage = toPage.createInverse();
            return extent.map(page -> fromPage.createTransformedShape(
                            new Rectangle2D.Double(page.left(), page.top(), page.width(), page.height()))
                    .getBounds2D());
        } catch (NoninvertibleTransformException e) {
            return Optional.empty();
        }
    }
}
