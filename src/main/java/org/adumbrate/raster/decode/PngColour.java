package org.adumbrate.raster.decode;

import java.util.List;

/** The colour of a PNG: its profile, else sRGB if it says so, else gAMA and cHRM, else sRGB. */
final class PngColour {
    /** The gAMA that writers state for sRGB (ISO/IEC 15948, 11.3.3.5). */
    private static final double SRGB_GAMMA = 0.45455;

    private static final double SAME = 0.002;

    private PngColour() {}

    static Colorimetry of(PngAncillary said, ColourModel model, List<String> notes) {
        if (said.profile().isPresent()) {
            return said.profile().colorimetry(model, notes);
        }
        if (said.srgb() || said.gamma() <= 0) {
            return Colorimetry.untagged(model);
        }
        boolean srgbPrimaries = said.chromaticities() == null || Primaries.areSrgb(said.chromaticities());
        if (srgbPrimaries && Math.abs(said.gamma() - SRGB_GAMMA) < SAME) {
            return Colorimetry.untagged(model);
        }
        Curve curve = Curve.power(1 / said.gamma());
        if (model == ColourModel.GREY || srgbPrimaries) {
            return Colorimetry.curve(model.channels(), curve);
        }
        Matrix3 toSrgb = Primaries.toSrgb(said.chromaticities());
        if (toSrgb.isRegular()) {
            return Colorimetry.matrix(new Curve[] {curve, curve, curve}, toSrgb);
        }
        notes.add("its primaries are passed over: they span no gamut");
        return Colorimetry.curve(model.channels(), curve);
    }
}
