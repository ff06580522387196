package org.adumbrate.linework.svg;

import java.util.Set;
import org.adumbrate.fault.InputFault;
import org.adumbrate.linework.LeftOut;
import org.w3c.dom.Element;

/** What an element is drawn through as a whole: clip path, mask, opacity, filter and blend mode (SVG 2, 3.5). */
final class SvgEffects {
    /** Blend modes that leave dark lines on paper as they are. */
    private static final Set<String> PLAIN = Set.of("normal", "multiply", "darken", "color-burn");

    private final SvgClips clips;
    private final SvgMasks masks;
    private final SvgCanvas canvas;

    SvgEffects(SvgClips clips, SvgMasks masks, SvgCanvas canvas) {
        this.clips = clips;
        this.masks = masks;
        this.canvas = canvas;
    }

    /** Draws in a scene. */
    @FunctionalInterface
    interface Content {
        void draw(SvgScene scene) throws InputFault;
    }

    /** Draws an element's content through all of them. */
    void apply(Element element, SvgScene scene, Content content) throws InputFault {
        SvgStyle style = scene.style();
        if (style.isPlain()) {
            content.draw(scene);
            return;
        }
        if (style.isFiltered() || !PLAIN.contains(style.blend())) {
            canvas.told(LeftOut.Kind.EFFECT);
        }
        SvgScene clipped = scene.clipped(clips.within(element, scene));
        SvgMasks.Masked masked = masks.within(element, clipped);
        boolean apart = style.isSeenThrough() || !masked.whole();
        SvgScene shown = clipped.clipped(masked.clip());
        content.draw(apart ? shown.apart(canvas.painted()) : shown);
    }
}
