package org.adumbrate.raster.decode.icc;

import java.util.List;
import org.adumbrate.raster.decode.light.Colorimetry;
import org.adumbrate.raster.decode.light.ColourModel;
import org.adumbrate.raster.decode.light.Curve;
import org.adumbrate.raster.decode.light.Matrix3;

/** What an embedded colour profile makes of a picture's colour. */
public final class EmbeddedProfile {
    /** Nearer than this to sRGB, in light, a profile is sRGB: writers round its numbers in many ways, none by as much. */
    private static final double SAME = 1e-3;

    /** No profile. */
    public static final EmbeddedProfile NONE = new EmbeddedProfile(new byte[0], false);

    private final byte[] bytes;
    private final boolean present;

    private EmbeddedProfile(byte[] bytes, boolean present) {
        this.bytes = bytes;
        this.present = present;
    }

    /** A profile, whose bytes may turn out to be none. */
    public static EmbeddedProfile of(byte[] bytes) {
        return new EmbeddedProfile(bytes, true);
    }

    /** Whether there is one, good or bad. */
    public boolean isPresent() {
        return present;
    }

    /**
     * The colorimetry of a picture with this profile: that of an untagged one if there is none.
     *
     * @param model the picture's colour
     * @param notes receives a line if the profile cannot be used and is passed over
     */
    public Colorimetry colorimetry(ColourModel model, List<String> notes) {
        if (present) {
            try {
                return of(new IccProfile(bytes), model);
            } catch (MalformedProfileException e) {
                notes.add("its colour profile is passed over: " + e.getMessage());
            }
        }
        if (model == ColourModel.CMYK) {
            notes.add("its inks are of no stated press, so their colour is a guess");
        }
        return Colorimetry.untagged(model);
    }

    private static Colorimetry of(IccProfile profile, ColourModel model) throws MalformedProfileException {
        String space = profile.deviceSpace();
        // Tables come before curves where a profile has both (ICC.1:2022, 8.10).
        if (model != ColourModel.GREY && space.equals(model.profileSpace()) && profile.has("A2B0")) {
            return PlatformProfile.sample(profile, model.channels());
        }
        if (model == ColourModel.GREY && space.equals(model.profileSpace())) {
            return grey(profile.curve("kTRC"), profile.connectionSpace());
        }
        if (model == ColourModel.RGB && space.equals(model.profileSpace())) {
            return colour(profile);
        }
        if (model == ColourModel.GREY && space.equals("RGB ") && profile.has("gTRC")) {
            // Neutral in the profile's space: all three curves act alike on the one channel.
            return grey(profile.curve("gTRC"), profile.connectionSpace());
        }
        throw new MalformedProfileException("it is for " + space.strip() + ", the picture is " + model);
    }

    private static Colorimetry grey(Curve curve, String connectionSpace) {
        Curve light = connectionSpace.equals("Lab ") ? v -> luminance(100 * curve.light(v)) : curve;
        return Colorimetry.curve(1, light.distanceTo(Curve.SRGB) < SAME ? Curve.SRGB : light);
    }

    private static Colorimetry colour(IccProfile profile) throws MalformedProfileException {
        if (!profile.connectionSpace().equals("XYZ ")) {
            throw new MalformedProfileException("it connects three curves to " + profile.connectionSpace());
        }
        Matrix3 toSrgb = Matrix3.SRGB_TO_D50
                .inverse()
                .after(Matrix3.ofColumns(profile.xyz("rXYZ"), profile.xyz("gXYZ"), profile.xyz("bXYZ")));
        Curve[] curves = {profile.curve("rTRC"), profile.curve("gTRC"), profile.curve("bTRC")};
        return isSrgb(curves, toSrgb) ? Colorimetry.curve(3, Curve.SRGB) : Colorimetry.matrix(curves, toSrgb);
    }

    private static boolean isSrgb(Curve[] curves, Matrix3 toSrgb) {
        double off = toSrgb.distanceToIdentity();
        for (Curve curve : curves) {
            off = Math.max(off, curve.distanceTo(Curve.SRGB));
        }
        return off < SAME;
    }

    /** Y of CIE L* (CIE 15; ISO/CIE 11664-4), for a white of 1. */
    private static double luminance(double lightness) {
        return lightness > 8 ? Math.pow((lightness + 16) / 116, 3) : lightness * 27 / 24389;
    }
}
