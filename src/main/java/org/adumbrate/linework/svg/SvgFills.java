package org.adumbrate.linework.svg;

import java.awt.geom.AffineTransform;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.clip.ClipShape;
import org.adumbrate.linework.clip.FillRule;
import org.w3c.dom.Element;

/** Keeps what an SVG fills; aside, in case that is nothing, what it strokes around. */
final class SvgFills implements SvgCanvas {
    /** Far more than an outline needs, and still put together in a moment. */
    private static final int MOST_SEGMENTS = 100_000;

    /** Curves may be straightened by this share of the drawing's greater side: 0.4 mm of a person. */
    private static final double TOLERANCE = 1 / 4500.0;

    private static final double FAR = 1e9;

    private final Path file;
    private final List<ClipShape<PagePoint>> filled = new ArrayList<>();
    private final List<ClipShape<PagePoint>> strokedAround = new ArrayList<>();
    private long segments;

    SvgFills(Path file) {
        this.file = file;
    }

    /** What is drawn finds around it: user units as they are, and no page that ends. */
    static SvgScene scene(SvgDocument document) {
        Optional<SvgViewBox> box = SvgViewBox.parse(document.root().getAttribute("viewBox"));
        return SvgScene.outermost(
                new AffineTransform(),
                Clip.rectangle(-FAR, -FAR, FAR, FAR),
                document.cascade().of(document.root()),
                box.map(SvgViewBox::width).orElse(100.0),
                box.map(SvgViewBox::height).orElse(100.0));
    }

    @Override
    public void shape(VectorPath<PagePoint> outline, SvgScene scene) throws InputFault {
        SvgStyle style = scene.style();
        if (style.isFilled()) {
            keep(outline, style.fillRule(), filled);
        } else if (style.stroke().kind() != PaintValue.Kind.NONE) {
            keep(ClosedRuns.of(outline), style.fillRule(), strokedAround);
        }
    }

    private void keep(VectorPath<PagePoint> outline, FillRule rule, List<ClipShape<PagePoint>> to) throws InputFault {
        segments += outline.segments();
        if (segments > MOST_SEGMENTS) {
            throw new InputFault(
                    file, "holds more than " + MOST_SEGMENTS + " pieces of outline", "simplify its paths first");
        }
        if (!outline.isEmpty()) {
            to.add(new ClipShape<>(outline, rule));
        }
    }

    @Override
    public void mark(Element element, SvgScene scene) {
        // has no outline to keep
    }

    @Override
    public void told(LeftOut.Kind kind) {
        // an outline has what its file draws, and no more is known of it
    }

    @Override
    public int painted() {
        return 0;
    }

    /** What is filled, or else what closed strokes enclose; nothing if that has no area. */
    Optional<Region<PagePoint>> region() {
        return region(filled).or(() -> region(strokedAround));
    }

    private static Optional<Region<PagePoint>> region(List<ClipShape<PagePoint>> shapes) {
        double tolerance = TOLERANCE
                * shapes.stream()
                        .mapToDouble(shape -> size(shape.outline()))
                        .max()
                        .orElse(0);
        List<Region<PagePoint>> regions = new ArrayList<>();
        for (ClipShape<PagePoint> shape : shapes) {
            if (tolerance > 0) {
                regions.add(
                        shape.rule() == FillRule.EVEN_ODD
                                ? Region.evenOdd(shape.outline(), tolerance)
                                : Region.nonZero(shape.outline(), tolerance));
            }
        }
        return Optional.of(Region.union(Space.PAGE, regions)).filter(region -> region.area() > 0);
    }

    private static double size(VectorPath<PagePoint> path) {
        return path.extent()
                .map(extent -> Math.max(extent.width(), extent.height()))
                .orElse(0.0);
    }
}
