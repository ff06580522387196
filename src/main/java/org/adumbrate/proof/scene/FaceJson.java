package org.adumbrate.proof.scene;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.json.Json;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.lines.FaceRegions;
import org.adumbrate.prepare.memory.Run;

/** The face of the drawing that somebody points into. */
public final class FaceJson {
    private FaceJson() {}

    /** Its number, outline and area; an empty object off the sheet. */
    public static Map<String, Object> of(PreparedSheet sheet, SheetPoint point, Run run) throws IOException {
        Optional<FaceRegions.Face> found = new FaceRegions(sheet.asked(), sheet.sorted(), sheet.size(), run).at(point);
        return found.map(face -> Json.object(
                        "face", face.number(),
                        "onLine", face.onLine(),
                        "areaMm2", SheetPoints.rounded(face.region().area()),
                        "d", PathData.of(face.region().outline())))
                .orElseGet(Json::object);
    }
}
