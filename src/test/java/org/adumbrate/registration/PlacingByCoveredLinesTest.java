package org.adumbrate.registration;

import static org.adumbrate.registration.DrawnScene.SHEET;
import static org.adumbrate.registration.DrawnScene.error;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.read.LineSheets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Passes of a model whose export paints its faces white from back to front, over lines that are not seen. */
class PlacingByCoveredLinesTest {
    private static final DrawnScene SCENE = new DrawnScene(1);
    private static final Affine<SheetPoint, RasterPoint> TRUTH = Lay.scaling(3, 3, 0, 0, -51.3, -40.8);

    @TempDir
    private Path folder;

    @Test
    void hiddenLinesAreNotPlacedBy() throws IOException {
        LineSheet sheet = LineSheets.read(export());
        assertThat(sheet.strokes()).hasSize(SCENE.shapes().size());
        assertThat(sheet.hidden().strokes()).isEqualTo(60 * SCENE.shapes().size());
        List<VectorPath<SheetPoint>> lines = sheet.strokes().stream()
                .map(stroke -> stroke.path().transform(Affine.scaling(Space.PAGE, Space.SHEET, 1, 1)))
                .toList();
        Placement placement = Registration.register(LinePattern.of(lines), SHEET, SCENE.pass(760, 500, TRUTH));
        assertThat(placement.status()).as(placement.message()).isEqualTo(Placement.Status.ALIGNED);
        assertThat(error(placement, TRUTH)).isLessThan(0.1);
    }

    /** Each shape over a scribble of 60 lines that stays within it. */
    private Path export() throws IOException {
        Random random = new Random(7);
        StringBuilder svg = new StringBuilder(
                "<svg xmlns='http://www.w3.org/2000/svg' width='300mm' height='200mm' viewBox='0 0 300 200'>"
                        + "<g fill='white' stroke='black' stroke-width='.2'>");
        for (List<SheetPoint> shape : SCENE.shapes()) {
            for (int k = 0; k < 60; k++) {
                svg.append(
                        String.format(Locale.ROOT, "<path d='M%sL%s'/>", within(shape, random), within(shape, random)));
            }
            svg.append("<polygon points='")
                    .append(shape.stream().map(p -> p.x() + "," + p.y()).collect(Collectors.joining(" ")))
                    .append("'/>");
        }
        return Files.writeString(folder.resolve("lines.svg"), svg.append("</g></svg>"));
    }

    /** A point in a quadrilateral that bulges everywhere: its corners' mean by some weights. */
    private static String within(List<SheetPoint> shape, Random random) {
        double[] weights = random.doubles(4, 0.1, 1).toArray();
        double sum = weights[0] + weights[1] + weights[2] + weights[3];
        double x = 0;
        double y = 0;
        for (int k = 0; k < 4; k++) {
            x += weights[k] / sum * shape.get(k).x();
            y += weights[k] / sum * shape.get(k).y();
        }
        return x + " " + y;
    }
}
