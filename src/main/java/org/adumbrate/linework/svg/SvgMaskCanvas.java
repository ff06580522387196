package org.adumbrate.linework.svg;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.svg.css.CssColor;
import org.w3c.dom.Element;

/** Gathers what is painted in a mask as the region that it shows (CSS Masking 1, 8). */
final class SvgMaskCanvas implements SvgCanvas {
    /** From here on, and down to as little, all is shown, or nothing: half a level of 255. */
    private static final double ALL = 1 - 0.5 / 255;

    private final SvgPaints paints;
    private final boolean alpha;
    private final Clip<PagePoint> clip;
    private Region<PagePoint> shown = Region.empty(Space.PAGE);
    private final List<Region<PagePoint>> waiting = new ArrayList<>();
    private boolean whole = true;
    private boolean followed = true;

    /**
     * Nothing yet.
     *
     * @param alpha whether it shows what its content covers, and not what it makes light
     * @param clip what its content is drawn in; under any other it is not followed
     */
    SvgMaskCanvas(SvgDocument document, boolean alpha, Clip<PagePoint> clip) {
        this.paints = new SvgPaints(document);
        this.alpha = alpha;
        this.clip = clip;
    }

    /** What it does not hide. */
    Region<PagePoint> shown() {
        waiting.add(shown);
        shown = Region.union(Space.PAGE, waiting);
        waiting.clear();
        return shown;
    }

    /** Whether its content is of a kind that says where it shows. */
    boolean isFollowed() {
        return followed;
    }

    /** Whether it hides or shows, and nothing in between. */
    boolean isWhole() {
        return whole && followed;
    }

    @Override
    public void shape(VectorPath<PagePoint> outline, SvgScene scene) {
        SvgStyle style = scene.style();
        SvgPaint fill = paints.of(style.fill(), outline, scene);
        followed &= paints.of(style.stroke(), outline, scene).isNone();
        followed &= clip == scene.clip();
        switch (fill.kind()) {
            case NONE, BROKEN -> {
                // paints nothing
            }
            case COLOR -> area(outline, scene, fill.color());
            case GRADIENT, PATTERN -> followed = false;
        }
    }

    private void area(VectorPath<PagePoint> outline, SvgScene scene, CssColor color) {
        double cover = color.alpha() * (scene.style().isFillSolid() && !scene.apart() ? 1 : 0.5);
        double light = alpha ? cover : cover * luminance(color.srgb());
        Region<PagePoint> region = SvgRegions.of(outline, scene.style().fillRule());
        if (light > 1 - ALL) {
            waiting.add(region);
            whole &= light >= ALL;
        } else if (cover >= ALL) {
            shown = shown().minus(region);
        } else {
            whole = false;
        }
    }

    /** Of encoded levels, as masks count it (CSS Masking 1, 8.1). */
    private static double luminance(Srgb color) {
        return (0.2125 * color.red() + 0.7154 * color.green() + 0.0721 * color.blue()) / 255;
    }

    @Override
    public void mark(Element element, SvgScene scene) {
        followed = false;
    }

    @Override
    public void told(LeftOut.Kind kind) {
        followed = false;
    }

    @Override
    public int painted() {
        return 0;
    }
}
