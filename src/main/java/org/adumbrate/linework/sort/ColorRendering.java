package org.adumbrate.linework.sort;

import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Srgb;

/** What becomes of a colour that an export states in another way: black and white, or the inks of a press. */
public enum ColorRendering {
    /** Only how light it is, by any of the three weightings in use. */
    GREY("grey") {
        @Override
        List<Srgb> of(double r, double g, double b) {
            return List.of(
                    // ISO 32000-1, 10.3.3; ITU-R BT.601
                    color(0.3 * r + 0.59 * g + 0.11 * b),
                    // ITU-R BT.709, of encoded values
                    color(0.2126 * r + 0.7152 * g + 0.0722 * b),
                    // the same of light, which is the luminance (IEC 61966-2-1)
                    color(encoded(0.2126 * light(r) + 0.7152 * light(g) + 0.0722 * light(b))));
        }
    },
    /** Inks without a profile, there by one of the two plain ways and back by the other. */
    CMYK("CMYK") {
        @Override
        List<Srgb> of(double r, double g, double b) {
            double light = Math.max(r, Math.max(g, b));
            double k = 1 - light;
            // ISO 32000-1, 10.3.4 takes black off the inks; back by the share that each leaves of what black lets
            // through
            Srgb taken = color((r + k) * light, (g + k) * light, (b + k) * light);
            // CSS Color Module Level 5 divides by what black lets through; back by adding black (ISO 32000-1, 10.3.5)
            Srgb added = light == 0 ? Srgb.BLACK : color(r / light - k, g / light - k, b / light - k);
            // presses print black with the other inks beneath, and profiles state it so: 1 or 2 in 100 of the light is
            // left
            return light == 0 ? List.of(Srgb.BLACK, new Srgb(8, 8, 8), new Srgb(6, 8, 12)) : List.of(taken, added);
        }
    };

    private final String word;

    ColorRendering(String word) {
        this.word = word;
    }

    /** Such as {@code grey}, for people. */
    public String word() {
        return word;
    }

    /** The renderings of a colour of which each component is a share of 1. */
    abstract List<Srgb> of(double r, double g, double b);

    /** As what a colour that is found may be a stated one: nothing if it is the same, or no rendering of it. */
    public static Optional<ColorRendering> of(Srgb stated, Srgb found) {
        if (stated.distanceTo(found) <= ColorSort.TOLERANCE) {
            return Optional.empty();
        }
        for (ColorRendering rendering : values()) {
            for (Srgb color : rendering.of(stated.red() / 255.0, stated.green() / 255.0, stated.blue() / 255.0)) {
                if (color.distanceTo(found) <= ColorSort.TOLERANCE) {
                    return Optional.of(rendering);
                }
            }
        }
        return Optional.empty();
    }

    private static Srgb color(double grey) {
        return color(grey, grey, grey);
    }

    private static Srgb color(double r, double g, double b) {
        return new Srgb(level(r), level(g), level(b));
    }

    private static int level(double share) {
        return (int) Math.round(255 * Math.max(0, Math.min(1, share)));
    }

    private static double light(double encoded) {
        return encoded <= 0.04045 ? encoded / 12.92 : Math.pow((encoded + 0.055) / 1.055, 2.4);
    }

    private static double encoded(double light) {
        return light <= 0.0031308 ? 12.92 * light : 1.055 * Math.pow(light, 1 / 2.4) - 0.055;
    }
}
