package org.adumbrate.prepare;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.adumbrate.drawing.Layer;
import org.adumbrate.fault.Refusal;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.lines.CutDrawing;
import org.adumbrate.prepare.lines.FaceRegions;
import org.adumbrate.prepare.lines.LineFiles;
import org.adumbrate.prepare.lines.PenDrawing;
import org.adumbrate.prepare.lines.ProfileDrawing;
import org.adumbrate.prepare.lines.SheetRegions;
import org.adumbrate.prepare.lines.SortedLines;
import org.adumbrate.prepare.lines.VeilDrawing;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.scene.SheetScene;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.reading.SheetFile;

/**
 * Everything that is drawn over the underlay.
 *
 * @param layers in no order yet, but those of one place in theirs
 * @param regions the named regions, and where floors are seen
 * @param scene the people, and what they stand in
 * @param findings what should be known of it
 */
public record SheetDrawing(List<Layer> layers, SheetRegions regions, SheetScene scene, List<Finding> findings) {
    /**
     * Draws everything.
     *
     * @throws Refusal if the depth pass does not belong to the sheet, or height lines do not settle what is asked of them
     */
    static SheetDrawing of(SheetFile asked, LineFiles files, SortedLines sorted, Run run) throws IOException, Refusal {
        Sheet sheet = asked.sheet();
        CutDrawing cut = sheet.cut().isPresent()
                ? CutDrawing.of(sheet.cut().get(), sorted, files.sheet(), run)
                : CutDrawing.NONE;
        FaceRegions faces = new FaceRegions(asked, sorted, files.sheet(), run);
        SheetRegions regions = SheetRegions.of(asked, files.sheet(), faces, run);
        SheetScene scene = SheetScene.of(asked, files, sorted, regions, cut, run);
        PenDrawing pens = PenDrawing.of(sheet, sorted, scene.map(), run);
        VeilDrawing veils = VeilDrawing.of(sheet, files, regions.byName(), faces, run);
        List<Layer> layers = new ArrayList<>(sorted.strays());
        layers.addAll(pens.layers());
        layers.addAll(veils.layers());
        if (sheet.profile().isPresent()) {
            layers.add(ProfileDrawing.of(sheet, pens.lines(), sorted.cut(), scene.map(), run));
        }
        layers.addAll(scene.entourage().layers());
        layers.addAll(cut.layers());
        List<Finding> findings = new ArrayList<>(regions.findings());
        findings.addAll(cut.findings());
        findings.addAll(pens.findings());
        findings.addAll(veils.findings());
        findings.addAll(scene.findings());
        return new SheetDrawing(layers, regions, scene, findings);
    }
}
