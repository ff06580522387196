package org.adumbrate.build;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.drawing.Layer;
import org.adumbrate.fault.Refusal;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.reading.SheetFile;

/**
 * Everything that is drawn over the underlay.
 *
 * @param layers in no order yet, but those of one place in theirs
 * @param scene the people, and what they stand in
 * @param findings what should be known of it
 */
record SheetDrawing(List<Layer> layers, SheetScene scene, List<Finding> findings) {
    /**
     * @param pattern the lines that a depth pass is placed by
     * @param stages knows what has not changed
     * @throws Refusal if the depth pass does not belong to the sheet, or height lines do not settle what is asked of them
     */
    static SheetDrawing of(
            SheetFile asked, LineFiles files, SortedLines sorted, Optional<LinePattern> pattern, SheetStages stages)
            throws IOException, Refusal {
        Sheet sheet = asked.sheet();
        CutDrawing cut = sheet.cut().isPresent()
                ? stages.cut(sheet.cut().get(), () -> CutDrawing.of(sheet.cut().get(), sorted.cut(), files.sheet()))
                : CutDrawing.NONE;
        SheetRegions regions = stages.regions(sheet, files.sheet(), () -> SheetRegions.of(asked, files.sheet()));
        SheetScene scene = SheetScene.of(asked, files, pattern, regions.byName(), cut.region(), stages);
        PenDrawing pens = PenDrawing.of(sheet, sorted, scene.map(), stages);
        VeilDrawing veils = VeilDrawing.of(sheet, files, regions.byName(), stages);
        List<Layer> layers = new ArrayList<>(sorted.strays());
        layers.addAll(pens.layers());
        layers.addAll(veils.layers());
        if (sheet.profile().isPresent()) {
            layers.add(ProfileDrawing.of(sheet, pens.paths(), sorted.cut(), scene.map(), stages));
        }
        layers.addAll(scene.entourage().layers());
        layers.addAll(cut.layers());
        List<Finding> findings = new ArrayList<>(regions.findings());
        findings.addAll(cut.findings());
        findings.addAll(pens.findings());
        findings.addAll(veils.findings());
        findings.addAll(scene.findings());
        return new SheetDrawing(layers, scene, findings);
    }
}
