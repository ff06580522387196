package org.adumbrate.linework.svg;

import java.awt.geom.AffineTransform;
import java.nio.file.Path;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.clip.Clip;
import org.w3c.dom.Element;

/** Bounding boxes (SVG 2, 8.10): of what is drawn, without strokes, clips and markers; texts are not known to have one. */
final class SvgBounds implements SvgCanvas {
    private static final double FAR = 1e9;

    private Optional<Extent> all = Optional.empty();

    private SvgBounds() {}

    /** The box around an element in its own user space; empty if it draws nothing. */
    static Optional<Extent> of(Element element, SvgScene scene, Path file, SvgDocument document) throws InputFault {
        SvgBounds bounds = new SvgBounds();
        SvgScene own = scene.mapped(new AffineTransform()).clipped(Clip.rectangle(-FAR, -FAR, FAR, FAR));
        SvgWalk.measuring(file, document, bounds).drawContent(element, own);
        return bounds.all;
    }

    /** The map from a box's own unit square, if it has an area. */
    static Optional<AffineTransform> unit(Optional<Extent> box) {
        return box.filter(extent -> extent.width() > 0 && extent.height() > 0)
                .map(extent -> new AffineTransform(extent.width(), 0, 0, extent.height(), extent.left(), extent.top()));
    }

    @Override
    public void shape(VectorPath<PagePoint> outline, SvgScene scene) {
        Optional<Extent> one = SvgExtent.of(outline);
        if (one.isPresent()) {
            all = Optional.of(all.map(extent -> extent.with(one.get())).orElse(one.get()));
        }
    }

    @Override
    public void mark(Element element, SvgScene scene) {
        if (element.getLocalName().equals("image")) {
            shape(SvgShapes.box(element, scene), scene);
        }
    }

    @Override
    public void told(LeftOut.Kind kind) {
        // measuring shows nothing
    }

    @Override
    public int painted() {
        return 0;
    }
}
