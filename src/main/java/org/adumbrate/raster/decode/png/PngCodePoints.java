package org.adumbrate.raster.decode.png;

import java.util.List;
import java.util.Optional;
import org.adumbrate.raster.decode.light.Colorimetry;
import org.adumbrate.raster.decode.light.ColourModel;
import org.adumbrate.raster.decode.light.Curve;
import org.adumbrate.raster.decode.light.Primaries;

/**
 * The colour that a cICP chunk names by numbers (PNG 3rd edition, 11.3.2.6; the numbers are those of ITU-T H.273, tables 2
 * and 3).
 *
 * @param primaries of ColourPrimaries
 * @param transfer of TransferCharacteristics
 * @param matrix of MatrixCoefficients: 0, as PNG has no luma and chroma
 * @param fullRange whether codes reach from 0 to full
 */
record PngCodePoints(int primaries, int transfer, int matrix, boolean fullRange) {
    private static final double[] D65 = {0.3127, 0.3290};

    /** Reads a body; none if it is of another length. */
    static Optional<PngCodePoints> read(byte[] body) {
        return body.length == 4
                ? Optional.of(new PngCodePoints(body[0] & 0xff, body[1] & 0xff, body[2] & 0xff, body[3] == 1))
                : Optional.empty();
    }

    /** The colorimetry, unless it is of a kind that is passed over, which is noted. */
    Optional<Colorimetry> colorimetry(ColourModel model, List<String> notes) {
        double[] xy = xy();
        Curve curve = curve();
        if (xy.length == 0 || curve == null || matrix != 0 || !fullRange) {
            notes.add("its colour space (cICP " + primaries + ", " + transfer + ", " + matrix + ", "
                    + (fullRange ? 1 : 0) + ") is passed over: it is none of prints; export it as sRGB");
            return Optional.empty();
        }
        if (model == ColourModel.GREY || Primaries.areSrgb(xy)) {
            return Optional.of(Colorimetry.curve(model.channels(), curve));
        }
        return Optional.of(Colorimetry.matrix(new Curve[] {curve, curve, curve}, Primaries.toSrgb(xy)));
    }

    /** White, red, green and blue; none for numbers that are not met in pictures. */
    private double[] xy() {
        return switch (primaries) {
            case 1 -> under(0.640, 0.330, 0.300, 0.600, 0.150, 0.060);
            case 5 -> under(0.640, 0.330, 0.290, 0.600, 0.150, 0.060);
            case 6, 7 -> under(0.630, 0.340, 0.310, 0.595, 0.155, 0.070);
            case 9 -> under(0.708, 0.292, 0.170, 0.797, 0.131, 0.046);
            case 12 -> under(0.680, 0.320, 0.265, 0.690, 0.150, 0.060);
            default -> new double[0];
        };
    }

    private static double[] under(double... rgb) {
        double[] xy = new double[8];
        System.arraycopy(D65, 0, xy, 0, 2);
        System.arraycopy(rgb, 0, xy, 2, 6);
        return xy;
    }

    private Curve curve() {
        return switch (transfer) {
            case 1, 6, 14, 15 -> PngCodePoints::camera;
            case 4 -> Curve.power(2.2);
            case 5 -> Curve.power(2.8);
            case 8 -> Curve.power(1);
            case 13 -> Curve.SRGB;
            default -> null;
        };
    }

    /** ITU-R BT.709, 1.2, turned round: alpha 1.099296826809443 and beta 0.018053968510807 as in ITU-T H.273. */
    private static double camera(double encoded) {
        double alpha = 1.099296826809443;
        return encoded < 4.5 * 0.018053968510807 ? encoded / 4.5 : Math.pow((encoded + alpha - 1) / alpha, 1 / 0.45);
    }
}
