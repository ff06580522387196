package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.Srgb;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.function.PDFunction;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceCMYK;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceGray;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceN;
import org.apache.pdfbox.pdmodel.graphics.color.PDDeviceRGB;
import org.apache.pdfbox.pdmodel.graphics.color.PDPattern;
import org.apache.pdfbox.pdmodel.graphics.color.PDSeparation;

/**
 * Colours of any colour space as sRGB; remembers what it has worked out.
 *
 * <p>Device colours are taken plainly, as nothing is known of the device, so that a stroke colour, which is here the name of a
 * layer, comes out as round as it went in: full black ink is #000000, and not the dark grey of one particular press. CMYK is
 * converted as CSS Color Module Level 5 does without a profile: each ink takes its share of what black lets through, so red is
 * (1 - c) (1 - k). ISO 32000-1, 10.3.5 adds the inks up, red being 1 - min(1, c + k), by which dark grey with a little
 * colour in it is black.
 */
final class PdfColors {
    private static final int MOST_REMEMBERED = 4096;

    private record SpaceKey(COSDictionary resources, COSName name) {}

    private record ColorKey(PDColorSpace space, List<Double> components) {}

    private final Map<SpaceKey, PDColorSpace> spaces = new HashMap<>();
    private final Map<ColorKey, Srgb> colors = new HashMap<>();

    /** The colour space of a name, which may be a resource's or one of the device spaces'. */
    PDColorSpace space(COSName name, PDResources resources) throws IOException {
        SpaceKey key = new SpaceKey(resources.getCOSObject(), name);
        PDColorSpace known = spaces.get(key);
        if (known == null) {
            COSDictionary defined = resources.getCOSObject().getCOSDictionary(COSName.COLORSPACE);
            if (defined != null) {
                PdfResources.requireModest(defined.getItem(name));
            }
            known = resources.getColorSpace(name);
            spaces.put(key, known);
        }
        return known;
    }

    /** The colour of a set of components; those that are missing count as 0. */
    Srgb srgb(PDColorSpace space, float[] components, PDResources resources) throws IOException {
        float[] c = Arrays.copyOf(components, space.getNumberOfComponents());
        if (space instanceof PDDeviceRGB) {
            return encoded(c[0], c[1], c[2]);
        }
        if (space instanceof PDDeviceGray) {
            return encoded(c[0], c[0], c[0]);
        }
        if (space instanceof PDDeviceCMYK) {
            float light = 1 - within(c[3]);
            return encoded(light * (1 - within(c[0])), light * (1 - within(c[1])), light * (1 - within(c[2])));
        }
        ColorKey key = new ColorKey(space, asList(c));
        Srgb known = colors.get(key);
        if (known == null) {
            known = workedOut(space, c, resources);
            if (colors.size() < MOST_REMEMBERED) {
                colors.put(key, known);
            }
        }
        return known;
    }

    /** The space of a colour; nothing if it cannot be worked out. */
    Optional<PDColorSpace> spaceOf(PdfFillColor fill) {
        try {
            return Optional.ofNullable(space(fill.space(), fill.resources()));
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    /** A colour that areas are filled with; nothing if it is a pattern or cannot be worked out. */
    Optional<Srgb> of(PdfFillColor fill) {
        return spaceOf(fill)
                .filter(space -> fill.pattern().isEmpty() && !(space instanceof PDPattern))
                .flatMap(space -> color(space, fill));
    }

    /** The colour that is stated beside an uncoloured pattern (8.7.3.3), in the space that lies under that of patterns. */
    Optional<Srgb> ofUncolored(PdfFillColor fill) {
        return spaceOf(fill)
                .flatMap(
                        space -> Optional.ofNullable(space instanceof PDPattern p ? p.getUnderlyingColorSpace() : null))
                .flatMap(space -> color(space, fill));
    }

    private Optional<Srgb> color(PDColorSpace space, PdfFillColor fill) {
        try {
            float[] components =
                    fill.components().length == 0 ? space.getInitialColor().getComponents() : fill.components();
            return Optional.of(srgb(space, components, fill.resources()));
        } catch (IOException | RuntimeException e) {
            return Optional.empty();
        }
    }

    private Srgb workedOut(PDColorSpace space, float[] components, PDResources resources) throws IOException {
        if (space instanceof PDSeparation || space instanceof PDDeviceN) {
            return tinted((COSArray) space.getCOSObject(), components, resources);
        }
        float[] rgb = space.toRGB(components);
        return encoded(rgb[0], rgb[1], rgb[2]);
    }

    /** Inks that are not at hand, by the alternate colour that the file gives for them (8.6.6.4 and 8.6.6.5). */
    private Srgb tinted(COSArray space, float[] tints, PDResources resources) throws IOException {
        PDColorSpace alternate = PDColorSpace.create(space.getObject(2), resources);
        return srgb(alternate, PDFunction.create(space.getObject(3)).eval(tints), resources);
    }

    private static Srgb encoded(float red, float green, float blue) {
        return new Srgb(level(red), level(green), level(blue));
    }

    private static int level(float component) {
        return Math.round(within(component) * 255);
    }

    private static float within(float component) {
        return Math.max(0, Math.min(1, component));
    }

    private static List<Double> asList(float[] components) {
        Double[] boxed = new Double[components.length];
        Arrays.setAll(boxed, k -> (double) components[k]);
        return List.of(boxed);
    }
}
