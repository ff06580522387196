package org.adumbrate.linework.svg;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.clip.ClipShape;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.page.PathTracer;
import org.adumbrate.linework.svg.css.CssLength;
import org.w3c.dom.Element;

/**
 * Masks (CSS Masking 1, 7 to 9) as clips: what a mask shows wholly or in part is drawn, what it hides wholly is not. One that cannot
 * be followed, as one of pictures or texts, hides only what lies outside its rectangle.
 */
final class SvgMasks {
    private static final double FAR = 1e9;

    private final Path file;
    private final SvgDocument document;
    private final SvgCanvas canvas;
    private final Set<Element> open = new HashSet<>();

    SvgMasks(Path file, SvgDocument document, SvgCanvas canvas) {
        this.file = file;
        this.document = document;
        this.canvas = canvas;
    }

    /**
     * What is left of a clip, and how.
     *
     * @param whole whether what is left is seen wholly
     */
    record Masked(Clip<PagePoint> clip, boolean whole) {}

    /** The clip of an element's scene narrowed by the mask that its style names. */
    Masked within(Element element, SvgScene scene) throws InputFault {
        String value = scene.style().stated("mask").orElse("none");
        String address = SvgReference.parse(value).map(SvgReference::address).orElse("");
        if (SvgReference.leadsOutside(address)) {
            canvas.told(LeftOut.Kind.OUTSIDE);
        }
        Optional<Element> mask = SvgReference.id(address)
                .flatMap(document::element)
                .filter(target -> target.getLocalName().equals("mask"));
        if (mask.isEmpty()) {
            return new Masked(scene.clip(), /* whole= */ true);
        }
        if (!open.add(mask.get())) {
            // goes round in circles: it does not hide itself
            return new Masked(scene.clip(), /* whole= */ true);
        }
        try {
            return within(mask.get(), element, scene);
        } finally {
            open.remove(mask.get());
        }
    }

    private Masked within(Element mask, Element element, SvgScene scene) throws InputFault {
        document.read(mask);
        boolean byBox = !mask.getAttribute("maskUnits").equals("userSpaceOnUse");
        boolean contentByBox = mask.getAttribute("maskContentUnits").equals("objectBoundingBox");
        Optional<Extent> box = byBox || contentByBox ? SvgBounds.of(element, scene, file, document) : Optional.empty();
        boolean flat = SvgBounds.unit(box).isEmpty();
        if (flat && (byBox || contentByBox)) {
            // nothing to count shares of: such a mask hides all (SVG 2, 8.11)
            return new Masked(scene.clip().withinAny(List.of()), /* whole= */ true);
        }
        SvgStyle style = document.cascade().of(mask);
        SvgScene units = byBox ? scene.moved(SvgBounds.unit(box).orElseThrow()).sized(1, 1) : scene;
        Clip<PagePoint> outer = scene.clip().withinAny(List.of(rectangle(mask, units.inside(style))));
        SvgScene inner = scene.inside(style).clipped(Clip.rectangle(-FAR, -FAR, FAR, FAR));
        SvgMaskCanvas content = new SvgMaskCanvas(
                document, style.stated("mask-type").orElse("luminance").equals("alpha"), inner.clip());
        SvgWalk walk = new SvgWalk(file, document, content, this);
        walk.drawChildren(
                mask,
                contentByBox ? inner.moved(SvgBounds.unit(box).orElseThrow()).sized(1, 1) : inner);
        if (!content.isWhole()) {
            canvas.told(LeftOut.Kind.MASK);
        }
        Masked own = within(mask, scene.inside(style).clipped(outer));
        boolean whole = own.whole && content.isWhole();
        if (!content.isFollowed()) {
            return new Masked(own.clip, whole);
        }
        Region<PagePoint> shown = content.shown();
        List<ClipShape<PagePoint>> shapes =
                shown.isEmpty() ? List.of() : List.of(new ClipShape<>(shown.outline(), FillRule.EVEN_ODD));
        return new Masked(own.clip.withinAny(shapes), whole);
    }

    private static ClipShape<PagePoint> rectangle(Element mask, SvgScene scene) {
        PathTracer pen = new PathTracer();
        pen.drawThrough(scene.toPage());
        pen.rectangle(
                side(mask, "x", scene, scene.width(), "-10%"),
                side(mask, "y", scene, scene.height(), "-10%"),
                side(mask, "width", scene, scene.width(), "120%"),
                side(mask, "height", scene, scene.height(), "120%"));
        return new ClipShape<>(pen.take(), FillRule.NON_ZERO);
    }

    private static double side(Element mask, String attribute, SvgScene scene, double whole, String unstated) {
        String stated = mask.getAttribute(attribute);
        return CssLength.parse(stated.isEmpty() ? unstated : stated)
                .map(length -> length.user(scene.style().basis(whole)))
                .orElse(0.0);
    }
}
