package org.adumbrate.raster.decode.png;

import java.util.List;
import java.util.Optional;
import org.adumbrate.raster.decode.light.Colorimetry;
import org.adumbrate.raster.decode.light.ColourModel;
import org.adumbrate.raster.decode.light.Curve;
import org.adumbrate.raster.decode.light.Matrix3;
import org.adumbrate.raster.decode.light.Primaries;

/**
 * The colour of a PNG, in the order of precedence of PNG 3rd edition, 4.3 (table 1): cICP, else iCCP, else sRGB, else gAMA
 * and cHRM; what is left open is as in sRGB.
 */
final class PngColour {
    /** The gAMA that writers state for sRGB (ISO/IEC 15948, 11.3.3.5). */
    private static final double SRGB_GAMMA = 0.45455;

    private static final double SAME = 0.002;

    private PngColour() {}

    static Colorimetry of(PngAncillary said, ColourModel model, List<String> notes) {
        Optional<Colorimetry> named = said.codePoints().flatMap(points -> points.colorimetry(model, notes));
        if (named.isPresent()) {
            return named.get();
        }
        if (said.profile().isPresent()) {
            return said.profile().colorimetry(model, notes);
        }
        if (said.srgb()) {
            return Colorimetry.untagged(model);
        }
        boolean srgbPrimaries = said.chromaticities() == null || Primaries.areSrgb(said.chromaticities());
        boolean srgbCurve = said.gamma() <= 0 || (srgbPrimaries && Math.abs(said.gamma() - SRGB_GAMMA) < SAME);
        Curve curve = srgbCurve ? Curve.SRGB : Curve.power(1 / said.gamma());
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
