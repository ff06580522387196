package org.adumbrate.linework.pdf;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.function.PDFunction;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;

/** Works out what soft masks let be seen (ISO 32000-1, 11.6.5.3); remembers each by its dictionary and where it lies. */
final class PdfSoftMasks {
    private static final int MOST_REMEMBERED = 1000;

    private record Key(COSDictionary mask, AffineTransform toPage) {}

    private final PdfScene scene;
    private final Map<Key, PdfMask> known = new HashMap<>();

    PdfSoftMasks(PdfScene scene) {
        this.scene = scene;
    }

    /**
     * A mask where the state has its coordinates now.
     *
     * @throws IOException if what it is made of is damaged
     */
    PdfMask of(COSDictionary mask, AffineTransform toPage, PDResources resources) throws IOException {
        Key key = new Key(mask, new AffineTransform(toPage));
        PdfMask found = known.get(key);
        if (found == null) {
            found = workedOut(mask, toPage, resources);
            if (known.size() < MOST_REMEMBERED) {
                known.put(key, found);
            }
        }
        return found;
    }

    private PdfMask workedOut(COSDictionary mask, AffineTransform toPage, PDResources resources) throws IOException {
        if (!(mask.getDictionaryObject(COSName.G) instanceof COSStream group)) {
            return PdfMask.UNKNOWN;
        }
        boolean byAlpha = COSName.ALPHA.equals(mask.getCOSName(COSName.S));
        ToDoubleFunction<PdfInk> value = byAlpha
                ? PdfInk::alpha
                : ink -> ink.color()
                        .map(color -> luminosity(color) * ink.alpha())
                        .orElse(Double.NaN);
        Region<PagePoint> page = Region.rectangle(
                Space.PAGE, 0, 0, scene.size().widthMm(), scene.size().heightMm());
        PdfMaskMarks marks =
                new PdfMaskMarks(byAlpha ? 0 : backdrop(mask, group, resources), value, transfer(mask), page);
        new PdfInterpreter(scene, toPage, marks).runForm(group, resources);
        return marks.mask();
    }

    /** Of a colour (11.5.3), as far as it matters here: whether it is black, white, or neither. */
    private static double luminosity(Srgb color) {
        return (0.3 * color.red() + 0.59 * color.green() + 0.11 * color.blue()) / 255;
    }

    /** What the colour around the group stands for; black where none is stated. */
    private double backdrop(COSDictionary mask, COSDictionary group, PDResources resources) throws IOException {
        COSArray stated = mask.getCOSArray(COSName.BC);
        COSDictionary attributes = group.getCOSDictionary(COSName.GROUP);
        COSBase space = attributes == null ? null : attributes.getDictionaryObject(COSName.CS);
        if (stated == null || space == null) {
            return 0;
        }
        PdfResources.requireModest(space);
        float[] components = stated.toFloatArray();
        return luminosity(scene.colors().srgb(PDColorSpace.create(space, resources), components, resources));
    }

    private static DoubleUnaryOperator transfer(COSDictionary mask) throws IOException {
        COSBase stated = mask.getDictionaryObject(COSName.TR);
        if (!(stated instanceof COSDictionary)) {
            return DoubleUnaryOperator.identity();
        }
        PdfResources.requireModest(stated);
        PDFunction function = PDFunction.create(stated);
        return x -> {
            try {
                return function.eval(new float[] {(float) x})[0];
            } catch (IOException | RuntimeException e) {
                return x;
            }
        };
    }
}
