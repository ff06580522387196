package org.adumbrate.linework.svg;

import java.awt.geom.AffineTransform;
import java.util.Optional;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.linework.clip.Clip;

/**
 * What an element finds around it; immutable.
 *
 * @param toPage user space to mm of the page; not to be changed
 * @param clip where anything shows
 * @param style the style of the element that encloses it
 * @param width what 100 % across stands for, in user units
 * @param height what 100 % down stands for, in user units
 * @param layer the name of the innermost named group
 * @param depth how many elements enclose it
 * @param since in a group that is itself seen through, the number of its first stroke: what is painted in it hides nothing before
 * @param apart whether it is in such a group
 * @param faint whether it is in a group with an opacity below 1
 */
record SvgScene(
        AffineTransform toPage,
        Clip<PagePoint> clip,
        SvgStyle style,
        double width,
        double height,
        Optional<String> layer,
        int depth,
        int since,
        boolean apart,
        boolean faint) {
    /** What a document finds around it, before anything is drawn. */
    static SvgScene outermost(
            AffineTransform toPage, Clip<PagePoint> clip, SvgStyle style, double width, double height) {
        return new SvgScene(
                toPage,
                clip,
                style,
                width,
                height,
                Optional.empty(),
                /* depth= */ 0,
                /* since= */ 0,
                /* apart= */ false,
                /* faint= */ false);
    }

    /** What 100 % of a length stands for that goes neither across nor down (SVG 2, 8.9). */
    double diagonal() {
        return Math.sqrt((width * width + height * height) / 2);
    }

    /** Under a transform of its own. */
    SvgScene moved(AffineTransform transform) {
        AffineTransform inner = new AffineTransform(toPage);
        inner.concatenate(transform);
        return mapped(inner);
    }

    /** Under another map. */
    SvgScene mapped(AffineTransform map) {
        return new SvgScene(map, clip, style, width, height, layer, depth, since, apart, faint);
    }

    /** Under another clip. */
    SvgScene clipped(Clip<PagePoint> narrower) {
        return new SvgScene(toPage, narrower, style, width, height, layer, depth, since, apart, faint);
    }

    /** One level further in. */
    SvgScene inside(SvgStyle innerStyle) {
        return new SvgScene(toPage, clip, innerStyle, width, height, layer, depth + 1, since, apart, faint);
    }

    /** In another style, at the same place. */
    SvgScene styled(SvgStyle other) {
        return new SvgScene(toPage, clip, other, width, height, layer, depth, since, apart, faint);
    }

    /** In a viewport of another size. */
    SvgScene sized(double innerWidth, double innerHeight) {
        return new SvgScene(toPage, clip, style, innerWidth, innerHeight, layer, depth, since, apart, faint);
    }

    /** In a group of another name, if it has one. */
    SvgScene named(Optional<String> name) {
        return new SvgScene(toPage, clip, style, width, height, name.or(() -> layer), depth, since, apart, faint);
    }

    /** In a group that is painted as a whole and seen through, so many strokes having been painted before it. */
    SvgScene apart(int painted) {
        return new SvgScene(
                toPage, clip, style, width, height, layer, depth, painted, /* apart= */ true, faint || style.isFaint());
    }
}
