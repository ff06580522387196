package org.adumbrate.report.page;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.drawing.Mark;
import org.adumbrate.drawing.Pen;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.perspective.FittedFloor;
import org.adumbrate.perspective.FittedHeights;
import org.adumbrate.perspective.HeightLine;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.View;
import org.adumbrate.raster.encode.PixelWriting;
import org.adumbrate.registration.FramePlacement;
import org.adumbrate.registration.Placement;

/** Reports to test with, with small pictures. */
final class Reports {
    static final String HOSTILE = "<b onclick=\"x()\">R&D</b>";

    static final SheetSize SHEET = new SheetSize(400, 200);
    static final View VIEW = new View(250, new SheetPoint(190, 110), 1.6, 0.1);

    Report bare() throws IOException {
        return new Report(
                "bare",
                SHEET,
                300,
                picture(),
                picture(),
                List.of(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                List.of());
    }

    Report full() throws IOException {
        return full(picture());
    }

    /** A report whose picture cannot be read. */
    Report failing() throws IOException {
        return full(new Picture(
                () -> {
                    throw new IOException("gone");
                },
                new PixelSize(8, 4)));
    }

    private Report full(Picture sheet) throws IOException {
        return new Report(
                HOSTILE,
                SHEET,
                300,
                sheet,
                picture(),
                List.of(pass(Optional.of(placed())), pass(Optional.empty())),
                Optional.of(new Perspective(Optional.of(VIEW), false, Optional.of(heights()), Map.of("yard", 0.0))),
                Optional.of(sun(VIEW, SunDirection.of(190, 47, 24))),
                List.of(pen()),
                List.of(
                        new Remark(Remark.Weight.NOTE, HOSTILE),
                        new Remark(Remark.Weight.WARNING, "a pen is missing"),
                        new Remark(Remark.Weight.NOTE, "good to know")),
                List.of(new WrittenFile("out/" + HOSTILE + ".tif", "underlay", new PixelSize(40, 20), 300, 1_600_000)));
    }

    static Sunlight sun(View view, SunDirection direction) {
        return new Sunlight(
                direction,
                24,
                HOSTILE,
                view,
                Optional.of(new Sunlight.Upright(HOSTILE, new SheetPoint(120, 170), new SheetPoint(120, 120))));
    }

    private Picture picture() throws IOException {
        PixelSize size = new PixelSize(8, 4);
        int[] pixels = new int[32];
        Arrays.fill(pixels, 0x808080);
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        PixelWriting.png(png, size, 96, pixels);
        return new Picture(() -> new ByteArrayInputStream(png.toByteArray()), size);
    }

    private PassSheet pass(Optional<Placement> placement) throws IOException {
        return new PassSheet(HOSTILE, HOSTILE, picture(), placement, Optional.of(picture()));
    }

    private static Placement placed() {
        return FramePlacement.unseen(new PixelSize(80, 40), SHEET.frame());
    }

    private static FittedHeights heights() {
        HeightLine line = new HeightLine(new SheetPoint(100, 160), new SheetPoint(100, 110));
        HeightLine stray = new HeightLine(new SheetPoint(300, 160), new SheetPoint(300, 150));
        return new FittedHeights(
                1.65, 110, 0.4, List.of(new FittedFloor("yard", 1.6, 0.02, List.of(line), 0.05, List.of(stray))));
    }

    private static LegendEntry pen() {
        VectorPath.Builder<SheetPoint> path = VectorPath.in(Space.SHEET);
        path.moveTo(2, 4.5);
        path.lineTo(28, 4.5);
        return new LegendEntry(
                LegendEntry.Group.LINES,
                HOSTILE,
                HOSTILE,
                HOSTILE,
                3,
                120,
                List.of(new Mark.Lines(Pen.round(0.35, Srgb.BLACK), List.of(path.build()))));
    }
}
