package org.adumbrate.linework.pdf;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.clip.ClipShape;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.page.AreaPaint;
import org.adumbrate.linework.page.FillLook;
import org.adumbrate.linework.page.PathTracer;
import org.adumbrate.linework.page.StrokeStyle;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDPattern;
import org.apache.pdfbox.pdmodel.graphics.color.PDSeparation;

/** What is painted that is no stroke: filled paths, pictures and shadings (ISO 32000-1, 8.5.3.3, 8.7.4 and 8.9). */
final class PdfAreas {
    private static final int SHADING_PATTERN = 2;

    private final PdfContext context;
    private final PdfColors colors;
    private final PdfMarks found;
    private final PdfTiles tiles;

    PdfAreas(PdfContext context, PdfColors colors, PdfMarks found, PdfTiles tiles) {
        this.context = context;
        this.colors = colors;
        this.found = found;
        this.tiles = tiles;
    }

    /**
     * Fills a path with the colour or the pattern that is set.
     *
     * @param outline how its outline is stroked, if it is
     * @return whether the stroke of its outline is taken, too
     */
    boolean fill(VectorPath<PagePoint> path, FillRule rule, Optional<StrokeStyle> outline) throws IOException {
        PdfGraphicsState state = context.state();
        if (state.fillAlpha <= 0 || path.isEmpty()) {
            return false;
        }
        PdfFillColor fill = state.fill;
        Optional<PDColorSpace> space = colors.spaceOf(fill);
        if (fill.pattern().isPresent() || space.orElse(null) instanceof PDPattern) {
            fillWithPattern(path, rule, fill);
        } else if (!(space.orElse(null) instanceof PDSeparation ink
                && ink.getColorantName().equals("None"))) {
            Optional<Srgb> color = colors.of(fill);
            boolean white = color.stream().anyMatch(AreaPaint::isWhite);
            AreaPaint paint = paint(AreaPaint.kind(white, outline.isPresent()), state.hides());
            PdfInk painted = new PdfInk(color, state.fillAlpha);
            if (color.isPresent()) {
                FillLook look =
                        new FillLook(color.get(), outline, context.layers().name(), state.isHalfShown());
                return found.filled(path, rule, state.seen(), paint, painted, look);
            }
            found.area(path, rule, state.seen(), paint, painted);
        }
        return false;
    }

    private AreaPaint paint(LeftOut.Kind kind, boolean hides) {
        return new AreaPaint(kind, hides, context.state().since);
    }

    /** A gradient hides where it reaches to; of a tiling pattern that draws no strokes the gaps are not known. */
    private void fillWithPattern(VectorPath<PagePoint> path, FillRule rule, PdfFillColor fill) throws IOException {
        PdfGraphicsState state = context.state();
        Optional<COSDictionary> pattern = fill.pattern().flatMap(name -> named(fill, name));
        Clip<PagePoint> seen = state.seen();
        boolean hides = false;
        if (pattern.isPresent() && pattern.get().getInt(COSName.PATTERN_TYPE) == SHADING_PATTERN) {
            AffineTransform toPage = new AffineTransform(state.patternsToPage);
            toPage.concatenate(PdfShadings.matrix(pattern.get()));
            COSDictionary shading = pattern.get().getCOSDictionary(COSName.SHADING);
            Optional<List<ClipShape<PagePoint>>> reach = PdfShadings.reach(shading, toPage);
            hides = reach.isPresent() && state.hides();
            seen = reach.map(shapes -> within(state.seen(), shapes)).orElse(seen);
        } else if (pattern.isPresent() && tiles.fill(path, rule, pattern.get(), fill)) {
            return;
        }
        found.area(path, rule, seen, paint(LeftOut.Kind.SHADING, hides), many(state));
    }

    private static Optional<COSDictionary> named(PdfFillColor fill, COSName name) {
        COSDictionary patterns = fill.resources().getCOSObject().getCOSDictionary(COSName.PATTERN);
        return Optional.ofNullable(patterns == null ? null : patterns.getCOSDictionary(name));
    }

    /** Paints a shading over all that the clip leaves. */
    void shading(COSName name) {
        PdfGraphicsState state = context.state();
        if (context.layers().hidden() || state.unseen || state.fillAlpha <= 0) {
            return;
        }
        Optional<List<ClipShape<PagePoint>>> reach =
                context.resource(COSName.SHADING, name).flatMap(shading -> PdfShadings.reach(shading, state.toPage));
        if (reach.isEmpty()) {
            found.leftOut(LeftOut.Kind.SHADING);
            return;
        }
        ClipShape<PagePoint> painted = reach.get().get(0);
        Clip<PagePoint> clip =
                within(state.seen(), reach.get().subList(1, reach.get().size()));
        found.area(painted.outline(), painted.rule(), clip, paint(LeftOut.Kind.SHADING, state.hides()), many(state));
    }

    private static PdfInk many(PdfGraphicsState state) {
        return new PdfInk(Optional.empty(), state.fillAlpha);
    }

    private static Clip<PagePoint> within(Clip<PagePoint> clip, List<ClipShape<PagePoint>> shapes) {
        Clip<PagePoint> inner = clip;
        for (ClipShape<PagePoint> shape : shapes) {
            inner = inner.within(shape.outline(), shape.rule());
        }
        return inner;
    }

    /** Paints a picture on the unit square; whatever masks it, may let everything be seen. */
    void image(COSDictionary image) {
        PdfVisibility layers = context.layers();
        int depth = layers.depth();
        COSDictionary layer = image.getCOSDictionary(COSName.OC);
        if (layer != null) {
            layers.open(layer);
        }
        PdfGraphicsState state = context.state();
        if (!layers.hidden() && !state.unseen && state.fillAlpha > 0) {
            PathTracer pen = new PathTracer();
            pen.drawThrough(state.toPage);
            pen.rectangle(0, 0, 1, 1);
            found.area(
                    pen.take(),
                    FillRule.NON_ZERO,
                    state.seen(),
                    paint(LeftOut.Kind.IMAGE, state.hides() && !isSeenThrough(image)),
                    many(state));
        }
        layers.closeTo(depth);
    }

    private static boolean isSeenThrough(COSDictionary image) {
        COSBase mask = image.getDictionaryObject(COSName.MASK);
        return image.getBoolean(COSName.IMAGE_MASK, COSName.IM, /* defaultValue= */ false)
                || mask != null
                || image.getCOSDictionary(COSName.SMASK) != null
                || image.getInt(COSName.getPDFName("SMaskInData"), 0) > 0;
    }
}
