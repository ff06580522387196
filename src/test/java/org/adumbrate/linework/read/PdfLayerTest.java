package org.adumbrate.linework.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.sort.ColorTally;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentGroup;
import org.apache.pdfbox.pdmodel.graphics.optionalcontent.PDOptionalContentProperties;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Layers by name; those that are off at first are left out. */
class PdfLayerTest {
    private static final String LINE = " 0 0 m 9 9 l S ";

    @TempDir
    Path folder;

    private final PdfSketch sketch = new PdfSketch(72, 72);
    private final PDOptionalContentGroup walls = new PDOptionalContentGroup("walls");
    private final PDOptionalContentGroup grid = new PDOptionalContentGroup("grid");

    @BeforeEach
    void layers() {
        PDOptionalContentProperties properties = new PDOptionalContentProperties();
        properties.addGroup(walls);
        properties.addGroup(grid);
        properties.setGroupEnabled(grid, false);
        sketch.document().getDocumentCatalog().setOCProperties(properties);
        sketch.with(COSName.PROPERTIES, "W", walls.getCOSObject()).with(COSName.PROPERTIES, "G", grid.getCOSObject());
    }

    @Test
    void strokesTellTheirInnermostLayer() throws IOException {
        assertThat(layersOf(LINE + "/OC /W BDC" + LINE + "/P BMC" + LINE + "EMC EMC" + LINE))
                .containsExactly("-", "walls", "walls", "-");
    }

    @Test
    void whatIsOnAHiddenLayerIsLeftOutAndNotCounted() throws IOException {
        sketch.draws("/OC /G BDC" + LINE + "/OC /W BDC" + LINE + "0 0 9 9 re f EMC EMC" + LINE);
        LineSheet sheet = LineSheets.read(sketch.saved(folder));
        assertThat(sheet.strokes()).hasSize(1);
        assertThat(sheet.otherMarks()).isZero();
    }

    @Test
    void aClipOnAHiddenLayerStillClips() throws IOException {
        sketch.draws("/OC /G BDC 0 0 36 72 re W n EMC 0 36 m 72 36 l S");
        assertThat(ColorTally.of(LineSheets.read(sketch.saved(folder))).get(0).lengthMm())
                .isEqualTo(12.7);
    }

    @Test
    void aFormMayBeALayer() throws IOException {
        double[] box = {0, 0, 72, 72};
        double[] identity = {1, 0, 0, 1, 0, 0};
        COSStream shown = sketch.form(LINE + "/P BMC", box, identity);
        shown.setItem(COSName.OC, walls);
        COSStream hidden = sketch.form(LINE, box, identity);
        hidden.setItem(COSName.OC, grid);
        sketch.with(COSName.XOBJECT, "S", shown).with(COSName.XOBJECT, "H", hidden);
        // the marked content that the form leaves open ends with it
        assertThat(layersOf("/S Do /H Do" + LINE)).containsExactly("walls", "-");
    }

    @Test
    void combinationsOfLayersFollowTheirPolicy() throws IOException {
        combination("Any", "AnyOn");
        combination("All", "AllOn");
        combination("AnyOff", "AnyOff");
        combination("AllOff", "AllOff");
        assertThat(layersOf("/OC /Any BDC" + LINE + "EMC /OC /All BDC" + LINE + LINE + "EMC /OC /AnyOff BDC" + LINE
                        + LINE + LINE + "EMC /OC /AllOff BDC" + LINE + "EMC"))
                .containsExactly("walls", "walls", "walls", "walls");
    }

    @Test
    void combinationsOfLayersFollowTheirExpression() throws IOException {
        COSArray notGrid = array(COSName.getPDFName("Not"), grid.getCOSObject());
        COSDictionary membership = membership();
        membership.setItem(COSName.VE, array(COSName.getPDFName("And"), walls.getCOSObject(), notGrid));
        COSDictionary opposite = membership();
        opposite.setItem(COSName.VE, array(COSName.getPDFName("Not"), walls.getCOSObject()));
        sketch.with(COSName.PROPERTIES, "M", membership).with(COSName.PROPERTIES, "N", opposite);
        assertThat(layersOf("/OC /M BDC" + LINE + "EMC /OC /N BDC" + LINE + LINE + "EMC"))
                .hasSize(1);
    }

    private void combination(String name, String policy) {
        COSDictionary membership = membership();
        membership.setItem(COSName.OCGS, array(walls.getCOSObject(), grid.getCOSObject()));
        membership.setName(COSName.P, policy);
        sketch.with(COSName.PROPERTIES, name, membership);
    }

    private static COSDictionary membership() {
        COSDictionary membership = new COSDictionary();
        membership.setItem(COSName.TYPE, COSName.OCMD);
        return membership;
    }

    private static COSArray array(COSBase... items) {
        COSArray array = new COSArray();
        Arrays.stream(items).forEach(array::add);
        return array;
    }

    private List<String> layersOf(String content) throws IOException {
        sketch.draws(content);
        return LineSheets.read(sketch.saved(folder)).strokes().stream()
                .map(stroke -> stroke.layer().orElse("-"))
                .toList();
    }
}
