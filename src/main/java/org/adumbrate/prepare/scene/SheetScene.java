package org.adumbrate.prepare.scene;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.perspective.View;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.lines.CutDrawing;
import org.adumbrate.prepare.lines.KnownDepth;
import org.adumbrate.prepare.lines.LineFiles;
import org.adumbrate.prepare.lines.SheetRegions;
import org.adumbrate.prepare.lines.SortedLines;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.passes.FigureLight;
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
public record SheetScene(
        Entourage entourage,
        Optional<FigureLight> light,
        SheetCamera camera,
        Optional<SheetDepth> depth,
        Optional<KnownDepth> map,
        List<Finding> findings) {

    /**
     * The people of a sheet in what they stand in.
     *
     * @param sorted the lines by pen
     * @param regions the named regions, and where floors are seen
     * @param cut what the section plane slices
     * @throws Refusal if the depth pass does not belong to the sheet, or too little is known to place people
     */
    public static SheetScene of(
            SheetFile asked, LineFiles files, SortedLines sorted, SheetRegions regions, CutDrawing cut, Run run)
            throws IOException, Refusal {
        Sheet sheet = asked.sheet();
        Optional<SheetDepth> depth = Optional.empty();
        if (sheet.passes().depth().isPresent()) {
            DepthPass pass = sheet.passes().depth().get();
            depth = Optional.of(
                    SheetDepth.of(pass.file(), pass.frame().map(frame -> frame.on(files.sheet())), files, run));
        }
        SheetCamera camera = SheetCamera.of(sheet, files, depth, run);
        Optional<KnownDepth> map = Optional.empty();
        if (depth.isPresent()) {
            map = Optional.of(depth.get().inMetres(camera.range().orElseThrow(), run));
        }
        boolean empty = sheet.figures().isEmpty()
                && sheet.planting().isEmpty()
                && sheet.birds().isEmpty();
        if (empty) {
            return new SheetScene(Entourage.NOBODY, Optional.empty(), camera, depth, map, camera.contradictions());
        }
        View view = camera.view();
        Scene scene = new Scene(files, sorted, view, camera.elevations(), map, regions.byName(), regions.floors(), cut);
        Entourage entourage = Entourage.of(asked, scene, run);
        List<Finding> findings = new ArrayList<>(camera.findings());
        findings.addAll(camera.contradictions());
        findings.addAll(entourage.findings());
        camera.heights().ifPresent(heights -> findings.addAll(BesideLines.of(heights, entourage.figures())));
        return new SheetScene(entourage, light(sheet, scene, entourage, findings, run), camera, depth, map, findings);
    }

    /** Whether shadows of figures are computed; not where a render of them is given. */
    public static boolean castsShadows(Sheet sheet) {
        return !sheet.figures().isEmpty()
                && sheet.sun().isPresent()
                && sheet.passes().figureShadow().isEmpty();
    }

    private static Optional<FigureLight> light(
            Sheet sheet, Scene scene, Entourage entourage, List<Finding> findings, Run run)
            throws IOException, Refusal {
        if (castsShadows(sheet)) {
            SheetSun sun = SheetSun.of(sheet.sun().orElseThrow(), scene.view());
            sun.finding().ifPresent(findings::add);
            return Optional.of(FigureShadows.of(scene, sun.direction(), entourage.figures(), sheet, run));
        }
        if (!entourage.figures().isEmpty() && sheet.sun().isEmpty()) {
            findings.add(new Finding(
                    Finding.Severity.NOTE,
                    "sun",
                    "sun: not stated, so figures cast no shadows; add sun with azimuth and altitude"));
        }
        return Optional.empty();
    }
}
