package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
import org.apache.pdfbox.pdmodel.graphics.color.PDSeparation;

/**
 * Colours of any colour space as sRGB; remembers what it has worked out.
 *
 * <p>Device colours are taken as ISO 32000-1, 10.3 converts them when nothing is known of the device, so that a stroke
 * colour, which is here the name of a layer, comes out as round as it went in: full black ink is #000000, and not the
 * dark grey of one particular press.
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
            return encoded(1 - c[0] - c[3], 1 - c[1] - c[3], 1 - c[2] - c[3]);
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
        return Math.round(Math.max(0, Math.min(1, component)) * 255);
    }

    private static List<Double> asList(float[] components) {
        Double[] boxed = new Double[components.length];
        Arrays.setAll(boxed, k -> (double) components[k]);
        return List.of(boxed);
    }
}
