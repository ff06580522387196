package org.adumbrate.linework.svg;

import java.awt.geom.AffineTransform;
import java.nio.file.Path;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.linework.svg.css.CssLength;
import org.w3c.dom.Element;

/**
 * The page that the outermost svg element shows.
 *
 * @param size its size
 * @param toPage maps user space to mm of the page
 * @param userWidth what 100 % across stands for, in user units
 * @param userHeight what 100 % down stands for, in user units
 */
record SvgPageFrame(SheetSize size, AffineTransform toPage, double userWidth, double userHeight) {
    /**
     * Finds the page. Width and height state its size, pixels being 1/96 inch; where they are missing or in percent, the
     * viewBox does, in pixels too.
     *
     * @throws InputFault if neither states a size
     */
    static SvgPageFrame of(Path file, SvgDocument document) throws InputFault {
        Element root = document.root();
        Optional<SvgViewBox> box = SvgViewBox.parse(root.getAttribute("viewBox"));
        Optional<Double> width = stated(document, "width");
        Optional<Double> height = stated(document, "height");
        if (box.isEmpty() && (width.isEmpty() || height.isEmpty())) {
            throw new InputFault(
                    file,
                    "does not say how large its page is: it has neither a width and height nor a viewBox",
                    "export it with a page size");
        }
        double widthMm = width.orElseGet(
                () -> height.map(h -> h * box.get().width() / box.get().height())
                        .orElseGet(() -> box.get().width() * CssLength.MM_PER_PX));
        double heightMm =
                height.orElseGet(() -> widthMm * box.get().height() / box.get().width());
        AffineTransform toPage = box.map(b -> b.into(widthMm, heightMm, root.getAttribute("preserveAspectRatio")))
                .orElseGet(() -> AffineTransform.getScaleInstance(CssLength.MM_PER_PX, CssLength.MM_PER_PX));
        return new SvgPageFrame(
                new SheetSize(widthMm, heightMm),
                toPage,
                box.map(SvgViewBox::width).orElse(widthMm / CssLength.MM_PER_PX),
                box.map(SvgViewBox::height).orElse(heightMm / CssLength.MM_PER_PX));
    }

    /** A side's length in mm, if it is stated and does not depend on a window; the property outdoes the attribute (SVG 2, 8.1). */
    private static Optional<Double> stated(SvgDocument document, String side) {
        SvgStyle style = document.cascade().of(document.root());
        return CssLength.parse(
                        style.stated(side).orElseGet(() -> document.root().getAttribute(side)))
                .filter(length -> !length.isPercentage() && length.value() > 0)
                .map(CssLength::mm)
                .filter(mm -> !Double.isNaN(mm));
    }

    /** The width of the page in pixels of CSS. */
    double widthPx() {
        return size.widthMm() / CssLength.MM_PER_PX;
    }

    /** The height of the page in pixels of CSS. */
    double heightPx() {
        return size.heightMm() / CssLength.MM_PER_PX;
    }

    /**
     * The map from user space to mm of the page.
     *
     * @param placing how the page itself is transformed, in pixels of CSS
     */
    AffineTransform toPage(AffineTransform placing) {
        AffineTransform all = AffineTransform.getScaleInstance(CssLength.MM_PER_PX, CssLength.MM_PER_PX);
        all.concatenate(placing);
        all.scale(1 / CssLength.MM_PER_PX, 1 / CssLength.MM_PER_PX);
        all.concatenate(toPage);
        return placing.isIdentity() ? toPage : all;
    }
}
