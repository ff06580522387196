package org.adumbrate.prepare.lines;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.raster.DecodedRows;
import org.adumbrate.raster.LightRows;
import org.adumbrate.raster.SrgbTable;
import org.adumbrate.raster.decode.RasterFiles;
import org.adumbrate.raster.trace.RegionTrace;
import org.adumbrate.raster.trace.Smoothing;
import org.adumbrate.raster.trace.TooManyCornersException;
import org.adumbrate.registration.FramePlacement;
import org.adumbrate.registration.Placement;
import org.adumbrate.sheetfile.Floor;
import org.adumbrate.sheetfile.Polygon;
import org.adumbrate.sheetfile.SheetRegion;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.reading.SheetFile;

/**
 * The named regions of a sheet.
 *
 * @param byName the regions in the order of the sheet file
 * @param floors where floors are seen by the floor's name, of those that say it
 * @param findings regions that turned out empty, points in faces that they can hardly have been chosen in, and rasters whose ratio
 *     says that they are of another view
 */
public record SheetRegions(Map<String, KnownRegion> byName, Map<String, KnownRegion> floors, List<Finding> findings) {
    private static final long ALLOWANCE = 256L << 20;

    /**
     * A region as it is traced.
     *
     * @param doubt that its raster's ratio says that it is of another view; regions of other names may be the same raster's
     */
    private record Traced(Region<SheetPoint> region, Optional<String> doubt) {}

    /**
     * The regions that a sheet file names.
     *
     * @param faces knows the faces of its drawing
     * @throws SheetFileFault if a raster has noise where a region should be, or a point of a face lies off the sheet
     */
    public static SheetRegions of(SheetFile file, SheetSize sheet, FaceRegions faces, Run run) throws IOException {
        Map<String, KnownRegion> regions = new LinkedHashMap<>();
        List<Finding> findings = new ArrayList<>();
        for (Map.Entry<String, SheetRegion> entry : file.sheet().regions().entrySet()) {
            String key = "regions." + entry.getKey();
            if (entry.getValue() instanceof SheetRegion.ByFaces stated) {
                FaceRegions.Named named = faces.of(key, stated);
                findings.addAll(named.findings());
                regions.put(entry.getKey(), named.known());
                continue;
            }
            Traced traced = region(file, entry.getKey(), entry.getValue(), sheet, run);
            traced.doubt().ifPresent(text -> findings.add(new Finding(Finding.Severity.WARNING, key, text)));
            if (traced.region().isEmpty()) {
                findings.add(new Finding(
                        Finding.Severity.WARNING,
                        key,
                        "regions: '" + entry.getKey() + "' covers nothing of the sheet"));
            }
            List<Object> content = content(entry.getValue(), sheet, run);
            regions.put(entry.getKey(), new KnownRegion(content, traced.region()));
        }
        return new SheetRegions(regions, floors(file, faces, findings), findings);
    }

    private static Map<String, KnownRegion> floors(SheetFile file, FaceRegions faces, List<Finding> findings)
            throws IOException {
        Map<String, KnownRegion> floors = new LinkedHashMap<>();
        for (Map.Entry<String, Floor> entry : file.sheet().floors().entrySet()) {
            Floor floor = entry.getValue();
            if (!floor.faces().isEmpty()) {
                FaceRegions.Named named = faces.of("floors." + entry.getKey(), floor);
                findings.addAll(named.findings());
                floors.put(entry.getKey(), named.known());
            } else if (!floor.outline().isEmpty()) {
                floors.put(entry.getKey(), new KnownRegion(List.of(floor.outline()), ofPolygons(floor.outline())));
            }
        }
        return floors;
    }

    private static Traced region(SheetFile file, String name, SheetRegion asked, SheetSize sheet, Run run)
            throws IOException {
        if (!(asked instanceof SheetRegion.ByColor color)) {
            List<Polygon> polygons = ((SheetRegion.ByPoints) asked).points();
            return run.of(
                    Part.REGIONS,
                    Traced.class,
                    List.of(polygons),
                    () -> new Traced(ofPolygons(polygons), Optional.empty()));
        }
        return run.of(Part.REGIONS, Traced.class, content(color, sheet, run), () -> traced(file, name, color, sheet));
    }

    private static List<Object> content(SheetRegion asked, SheetSize sheet, Run run) {
        return asked instanceof SheetRegion.ByColor color
                ? List.of(sheet, color, run.digest(color.raster()))
                : List.of(asked);
    }

    private static Traced traced(SheetFile file, String name, SheetRegion.ByColor asked, SheetSize sheet)
            throws IOException {
        try {
            return traced(asked, sheet);
        } catch (TooManyCornersException e) {
            String text = asked.raster() + ": what is near " + asked.color() + " " + e.getMessage()
                    + "; render it in flat colours without noise or texture, or lower 'tolerance'";
            SheetFileFault fault = new SheetFileFault(List.of(file.complaint("regions." + name + ".raster", text)));
            fault.initCause(e);
            throw fault;
        }
    }

    /** What polygons of a sheet file cover. */
    public static Region<SheetPoint> ofPolygons(List<Polygon> polygons) {
        return Region.of(Space.SHEET, polygons.stream().map(Polygon::corners).toList());
    }

    /** A region of one colour is where the frame says, or where its raster's ratio puts it: there are no edges of lines in it. */
    private static Traced traced(SheetRegion.ByColor asked, SheetSize sheet) throws IOException {
        try (DecodedRows rows = DecodedRows.whole(RasterFiles.open(asked.raster()), ALLOWANCE)) {
            PixelSize size = rows.size();
            Placement placement = asked.frame()
                    .map(frame -> FramePlacement.unseen(size, frame.on(sheet)))
                    .orElseGet(() -> FramePlacement.byRatio(size, sheet));
            Optional<String> doubt = placement.aligned()
                    ? Optional.empty()
                    : Optional.of(asked.raster() + ": " + placement.message() + "; give it a frame");
            boolean[] inside = inside(rows, asked.color(), asked.tolerance());
            Region<RasterPoint> region =
                    RegionTrace.trace((x, y) -> inside[y * size.width() + x], size, Smoothing.USUAL);
            return new Traced(region.transform(placement.passToSheet()), doubt);
        }
    }

    private static boolean[] inside(LightRows rows, Srgb color, int tolerance) throws IOException {
        PixelSize size = rows.size();
        boolean[] inside = new boolean[Math.toIntExact(size.count())];
        int channels = rows.channels();
        float[] row = new float[size.width() * channels];
        int[] levels = {color.red(), color.green(), color.blue()};
        for (int y = 0; y < size.height(); y++) {
            rows.read(0, y, size.width(), 1, row);
            for (int x = 0; x < size.width(); x++) {
                boolean near = true;
                for (int c = 0; c < 3 && near; c++) {
                    float level = SrgbTable.encode(Math.max(0, Math.min(1, row[x * channels + c % channels])));
                    near = Math.abs(level * 255 - levels[c]) <= tolerance + 0.5f;
                }
                inside[y * size.width() + x] = near;
            }
        }
        return inside;
    }
}
