package org.adumbrate.build;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.figure.depth.DepthMap;
import org.adumbrate.figure.depth.DepthScale;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.View;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.sheetfile.Camera;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.SheetFile;
import org.adumbrate.sheetfile.Sun;

record SheetScene(Entourage entourage, Optional<FigureLight> light, Optional<SheetDepth> depth, List<Finding> findings) {
    static SheetScene of(SheetFile asked, SheetSize size, List<LaidLines> lines, LinePattern pattern)
            throws IOException, Refusal {
        Sheet sheet = asked.sheet();
        if (sheet.figures().isEmpty() && sheet.planting().isEmpty() && sheet.birds().isEmpty()) {
            return new SheetScene(Entourage.NOBODY, Optional.empty(), Optional.empty(), List.of());
        }
        Camera camera = sheet.camera().get();
        View view = new View(camera.focal().get().mm(), camera.principalPoint().get(), camera.eyeHeight().get().m(), camera.turn().radians());
        Map<String, Double> elevations = new HashMap<>();
        sheet.floors().forEach((name, floor) -> elevations.put(name, floor.elevation().m()));
        SheetRegions regions = SheetRegions.of(sheet.regions(), size);
        Optional<SheetDepth> depth = Optional.empty();
        Optional<DepthMap> map = Optional.empty();
        if (sheet.passes().depth().isPresent()) {
            var pass = sheet.passes().depth().get();
            SheetDepth read = SheetDepth.of(pass.file(), pass.frame().map(f -> f.on(size)), size, pattern);
            depth = Optional.of(read);
            map = Optional.of(DepthMap.of(read.numbers(), new DepthScale(pass.near().get().m(), pass.far().get().m()), read.placement().passToSheet()));
        }
        List<VectorPath<SheetPoint>> edges = new ArrayList<>();
        lines.forEach(laid -> edges.addAll(laid.paths()));
        Scene scene = new Scene(size, view, elevations, map, regions.byName(), Region.empty(Space.SHEET), edges);
        Entourage entourage = Entourage.of(asked, scene);
        Optional<FigureLight> light = Optional.empty();
        if (sheet.sun().isPresent()) {
            Sun.ByAngles a = (Sun.ByAngles) sheet.sun().get();
            SunDirection sun = SunDirection.of(a.azimuth().degrees(), a.altitude().degrees(), a.north().degrees());
            light = Optional.of(new FigureShadows(scene, sun, entourage.figures(), sheet.floors()));
        }
        List<Finding> findings = new ArrayList<>(regions.findings());
        findings.addAll(entourage.findings());
        return new SheetScene(entourage, light, depth, findings);
    }
}
