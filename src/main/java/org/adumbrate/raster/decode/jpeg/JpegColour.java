package org.adumbrate.raster.decode.jpeg;

import java.util.List;
import java.util.Optional;
import org.adumbrate.raster.decode.light.ColourModel;

/** The colour of a JPEG's components, and the segment that says so beyond doubt. */
enum JpegColour {
    GREY(ColourModel.GREY),
    YCBCR(ColourModel.RGB),
    RGB(ColourModel.RGB),
    CMYK(ColourModel.CMYK),
    YCCK(ColourModel.CMYK);

    private final ColourModel model;

    JpegColour(ColourModel model) {
        this.model = model;
    }

    /** Of what the decoder delivers. */
    ColourModel model() {
        return model;
    }

    /** An APP0 or APP14 segment, whole. */
    byte[] segment() {
        return switch (this) {
            case GREY, YCBCR -> jfif();
            case RGB, CMYK -> adobe(0);
            case YCCK -> adobe(2);
        };
    }

    /**
     * The rules that all decoders follow: JFIF has YCbCr only; else the Adobe segment decides; else components named R, G
     * and B are that; else YCbCr, and CMYK of four.
     *
     * @param components the component identifiers, in order
     * @param jfif whether there is a JFIF segment
     * @param adobeTransform of the Adobe segment, -1 without one
     * @return empty if there are not 1, 3 or 4 components
     */
    static Optional<JpegColour> of(List<Integer> components, boolean jfif, int adobeTransform) {
        return switch (components.size()) {
            case 1 -> Optional.of(GREY);
            case 3 -> Optional.of(isRgb(components, jfif, adobeTransform) ? RGB : YCBCR);
            case 4 -> Optional.of(adobeTransform > 0 ? YCCK : CMYK);
            default -> Optional.empty();
        };
    }

    private static boolean isRgb(List<Integer> components, boolean jfif, int adobeTransform) {
        if (jfif || adobeTransform >= 0) {
            return !jfif && adobeTransform == 0;
        }
        return components.get(0) == 'R' && components.get(1) == 'G' && components.get(2) == 'B';
    }

    private static byte[] jfif() {
        return new byte[] {(byte) 0xff, (byte) 0xe0, 0, 16, 'J', 'F', 'I', 'F', 0, 1, 1, 0, 0, 1, 0, 1, 0, 0};
    }

    private static byte[] adobe(int transform) {
        return new byte[] {
            (byte) 0xff, (byte) 0xee, 0, 14, 'A', 'd', 'o', 'b', 'e', 0, 100, 0, 0, 0, 0, (byte) transform
        };
    }
}
