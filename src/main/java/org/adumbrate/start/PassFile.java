package org.adumbrate.start;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.IntPredicate;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.perspective.HeightLine;
import org.adumbrate.raster.DecodedRows;
import org.adumbrate.raster.GreyImage;
import org.adumbrate.raster.GreyReduction;
import org.adumbrate.raster.decode.RasterFiles;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.registration.PassImage;
import org.adumbrate.registration.Placement;
import org.adumbrate.registration.Registration;
import org.adumbrate.underlay.PassTones;

/**
 * A raster, placed and looked at.
 *
 * @param file where it is
 * @param placement where it lies on the sheet, or why it does not
 * @param look its tones on the sheet
 * @param guess what it seems to be
 */
record PassFile(Path file, Placement placement, ToneLook look, PassKind.Guess guess) {
    private static final long PLACING_PIXELS = 16_000_000;

    /** As many samples are kept in memory; more are kept in a file. */
    private static final long ALLOWANCE = 256L << 20;

    /** @param heights lines of one height that stand on floors */
    static PassFile of(Path file, LinePattern pattern, SheetSize sheet, List<HeightLine> heights) throws IOException {
        boolean grey;
        PassImage image;
        try (DecodedRows rows = DecodedRows.whole(RasterFiles.open(file), ALLOWANCE)) {
            image = image(rows);
            grey = PassTones.measure(rows).grey();
        }
        Placement placement = Registration.register(pattern, sheet, image);
        Affine<RasterPoint, SheetPoint> toSheet = placement.passToSheet();
        ToneLook look = ToneLook.of(image.grey(), placement.aligned() ? onSheet(image, toSheet, sheet) : k -> true);
        boolean growing = placement.aligned() && Distance.grows(image, toSheet.inverse(), heights);
        return new PassFile(file, placement, look, PassKind.of(look, !grey, growing));
    }

    /** Its picture, read again. */
    PassImage image() throws IOException {
        try (DecodedRows rows = DecodedRows.whole(RasterFiles.open(file), ALLOWANCE)) {
            return image(rows);
        }
    }

    private static PassImage image(DecodedRows rows) throws IOException {
        return new PassImage(GreyReduction.of(rows, GreyReduction.factorFor(rows.size(), PLACING_PIXELS)), rows.size());
    }

    private static IntPredicate onSheet(PassImage image, Affine<RasterPoint, SheetPoint> toSheet, SheetSize sheet) {
        GreyImage grey = image.grey();
        int times = image.reduction();
        return k -> {
            int row = k / grey.size().width();
            int column = k % grey.size().width();
            double u = (column + 0.5) * times;
            double v = (row + 0.5) * times;
            double x = toSheet.mapX(u, v);
            double y = toSheet.mapY(u, v);
            return x >= 0 && y >= 0 && x <= sheet.widthMm() && y <= sheet.heightMm();
        };
    }

    boolean is(PassKind kind) {
        return placement.aligned() && guess.kind() == kind;
    }

    /** Pixels per inch on the sheet. */
    double ppi() {
        return placement.ppi();
    }
}
