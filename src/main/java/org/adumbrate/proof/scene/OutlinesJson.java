package org.adumbrate.proof.scene;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.figure.outline.FigureOutline;
import org.adumbrate.figure.outline.OutlineKind;
import org.adumbrate.figure.outline.ShippedOutlines;
import org.adumbrate.json.Json;

/** The outlines that come with the program, for a page that offers them as drawn. */
public final class OutlinesJson {
    private OutlinesJson() {}

    /**
     * Those of a kind.
     *
     * @param kind {@code figure}, {@code plant} or {@code bird}
     */
    public static List<Map<String, Object>> of(String kind) {
        OutlineKind wanted =
                switch (kind) {
                    case "plant" -> OutlineKind.PLANT;
                    case "bird" -> OutlineKind.BIRD;
                    default -> OutlineKind.PERSON;
                };
        return ShippedOutlines.names(wanted).stream()
                .flatMap(name -> ShippedOutlines.named(name).stream())
                .map(OutlinesJson::one)
                .toList();
    }

    /** The foot is where the outline's own coordinates begin. */
    private static Map<String, Object> one(FigureOutline outline) {
        return Json.object(
                "name", outline.name(),
                "d", PathData.of(outline.body().outline()),
                "height", outline.height(),
                "foot", List.of(0, 0),
                "nominalM",
                        outline.nominalM().isPresent()
                                ? Optional.of(outline.nominalM().getAsDouble())
                                : Optional.empty());
    }
}
