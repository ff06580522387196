package org.adumbrate.linework.pdf;

import java.awt.geom.AffineTransform;
import org.adumbrate.geometry.Length;
import org.adumbrate.geometry.SheetSize;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * The visible page: the CropBox within the MediaBox, turned by /Rotate, one unit being /UserUnit points (ISO 32000-1,
 * 7.7.3.3 and 14.11.2).
 *
 * @param size the size as seen
 * @param toPage maps default user space to mm of the page as seen
 */
record PdfPageFrame(SheetSize size, AffineTransform toPage) {
    /** @throws IllegalArgumentException if the boxes leave no visible page */
    static PdfPageFrame of(PDPage page) {
        PDRectangle box = page.getCropBox();
        double points = page.getUserUnit();
        double width = mm(((double) box.getUpperRightX() - box.getLowerLeftX()) * points);
        double height = mm(((double) box.getUpperRightY() - box.getLowerLeftY()) * points);
        double unit = mm(points);
        AffineTransform upright = new AffineTransform(unit, 0, 0, -unit, 0, 0);
        upright.translate(-box.getLowerLeftX(), -box.getUpperRightY());
        AffineTransform turn =
                switch (page.getRotation()) {
                    case 90 -> new AffineTransform(0, 1, -1, 0, height, 0);
                    case 180 -> new AffineTransform(-1, 0, 0, -1, width, height);
                    case 270 -> new AffineTransform(0, -1, 1, 0, 0, width);
                    default -> new AffineTransform();
                };
        turn.concatenate(upright);
        boolean onItsSide = page.getRotation() % 180 != 0;
        return new PdfPageFrame(onItsSide ? new SheetSize(height, width) : new SheetSize(width, height), turn);
    }

    /** Written so that a whole number of inches comes out exact. */
    private static double mm(double points) {
        return points / 72 * Length.MM_PER_INCH;
    }
}
