package org.adumbrate.build;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.perspective.View;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.sheetfile.DepthPass;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.reading.SheetFile;

/**
 * The people of a sheet, and what they stand in.
 *
 * @param entourage as it is drawn
 * @param light what arrives past the figures, if the sun is known
 * @param camera the camera that they are seen by
 * @param depth the depth pass and where it lies
 * @param map the same in metres
 * @param findings what should be known of it
 */
record SheetScene(
        Entourage entourage,
        Optional<FigureLight> light,
        SheetCamera camera,
        Optional<SheetDepth> depth,
        Optional<DepthMap> map,
        List<Finding> findings) {

    /**
     * @param pattern the lines that a depth pass is placed by
     * @param regions the named regions
     * @param cut what the section plane slices
     * @param stages knows what has not changed
     * @throws Refusal if the depth pass does not belong to the sheet, or too little is known to place people
     */
    static SheetScene of(
            SheetFile asked,
            LineFiles files,
            Optional<LinePattern> pattern,
            Map<String, Region<SheetPoint>> regions,
            Region<SheetPoint> cut,
            SheetStages stages)
            throws IOException, Refusal {
        Sheet sheet = asked.sheet();
        Optional<SheetDepth> depth = Optional.empty();
        if (sheet.passes().depth().isPresent()) {
            DepthPass pass = sheet.passes().depth().get();
            depth = Optional.of(SheetDepth.of(
                    pass.file(),
                    pass.frame().map(frame -> frame.on(files.sheet())),
                    files.sheet(),
                    pattern.orElseThrow(),
                    stages));
        }
        SheetCamera camera = new SheetCamera(sheet, files, depth);
        Optional<DepthMap> map = Optional.empty();
        if (depth.isPresent()) {
            map = Optional.of(depth.get().inMetres(camera.range().orElseThrow()));
        }
        boolean empty = sheet.figures().isEmpty()
                && sheet.planting().isEmpty()
                && sheet.birds().isEmpty();
        if (empty) {
            return new SheetScene(Entourage.NOBODY, Optional.empty(), camera, depth, map, List.of());
        }
        View view = camera.view();
        Scene scene = new Scene(files.sheet(), view, camera.elevations(), map, regions, cut, edges(files));
        Entourage entourage = Entourage.of(asked, scene);
        List<Finding> findings = new ArrayList<>(camera.findings());
        findings.addAll(entourage.findings());
        return new SheetScene(entourage, light(sheet, scene, entourage, findings), camera, depth, map, findings);
    }

    private static List<VectorPath<SheetPoint>> edges(LineFiles files) {
        List<VectorPath<SheetPoint>> edges = new ArrayList<>();
        files.base().forEach(laid -> edges.addAll(laid.paths()));
        return edges;
    }

    /** Whether shadows of figures are computed; not where a render of them is given. */
    static boolean castsShadows(Sheet sheet) {
        return !sheet.figures().isEmpty()
                && sheet.sun().isPresent()
                && sheet.passes().figureShadow().isEmpty();
    }

    private static Optional<FigureLight> light(Sheet sheet, Scene scene, Entourage entourage, List<Finding> findings)
            throws Refusal {
        if (castsShadows(sheet)) {
            SheetSun sun = SheetSun.of(sheet.sun().orElseThrow(), scene.view());
            sun.finding().ifPresent(findings::add);
            return Optional.of(new FigureShadows(scene, sun.direction(), entourage.figures(), sheet.floors()));
        }
        if (!entourage.figures().isEmpty() && sheet.sun().isEmpty()) {
            findings.add(new Finding(
                    Finding.Severity.NOTE,
                    "sun: not stated, so figures cast no shadows; add sun with azimuth and altitude"));
        }
        return Optional.empty();
    }
}
