package org.adumbrate.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.adumbrate.delivery.BuildPlan;
import org.adumbrate.delivery.BuildResult;
import org.adumbrate.delivery.Output;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.json.Json;
import org.adumbrate.output.OutputFile;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.passes.PassPlacement;

/** Results as machines read them. */
final class Results {
    private Results() {}

    static Map<String, Object> of(BuildResult result) {
        return Json.object(
                "outputs",
                result.outputs().stream().map(Results::of).toList(),
                "placements",
                result.placements().stream().map(Results::of).toList(),
                "findings",
                result.findings().stream()
                        .map(finding -> Json.object(
                                "severity", finding.severity().name().toLowerCase(java.util.Locale.ROOT),
                                "key", finding.key(),
                                "text", finding.text()))
                        .toList(),
                "seconds",
                result.seconds(),
                "stages",
                stages(result.stages()));
    }

    /** An output; {@code linksTo} is the file that was written where a link stands in its place and was kept. */
    private static Map<String, Object> of(Output output) {
        Map<String, Object> object = Json.object(
                "file", output.file(),
                "kind", output.kind(),
                "width", output.size().width(),
                "height", output.size().height(),
                "dpi", output.dpi(),
                "bytes", output.bytes());
        OutputFile.behindLink(output.file()).ifPresent(file -> object.put("linksTo", file));
        return object;
    }

    private static Map<String, Object> stages(Map<String, Run.Count> stages) {
        Map<String, Object> counts = new LinkedHashMap<>();
        stages.forEach(
                (stage, count) -> counts.put(stage, Json.object("reused", count.reused(), "made", count.made())));
        return counts;
    }

    static Map<String, Object> of(BuildPlan plan) {
        return Json.object(
                "widthMm",
                plan.size().widthMm(),
                "heightMm",
                plan.size().heightMm(),
                "reads",
                plan.reads().stream()
                        .map(read -> Json.object("file", read.file(), "bytes", read.bytes()))
                        .toList(),
                "writes",
                plan.writes().stream()
                        .map(write -> Json.object(
                                "file", write.file(),
                                "kind", write.kind(),
                                "width", write.size().width(),
                                "height", write.size().height(),
                                "dpi", write.dpi(),
                                "replaces", write.replaces()))
                        .toList());
    }

    static Map<String, Object> of(PassPlacement pass) {
        var placement = pass.placement();
        return Json.object(
                "pass", pass.file(),
                "widthPx", placement.pass().width(),
                "heightPx", placement.pass().height(),
                "status", placement.status().word(),
                "explains", placement.explains().word(),
                "passToSheet", matrix(placement.passToSheet()),
                "residualMm", placement.residualMm(),
                "residualPx", placement.residualPx(),
                "uncertaintyPx", placement.uncertaintyPx(),
                "confidence", placement.confidence(),
                "message", placement.message());
    }

    static Map<String, Object> sheet(Object file, SheetSize size) {
        return Json.object("file", file, "widthMm", size.widthMm(), "heightMm", size.heightMm());
    }

    private static List<List<Double>> matrix(Affine<?, ?> map) {
        return List.of(List.of(map.xx(), map.xy(), map.x0()), List.of(map.yx(), map.yy(), map.y0()));
    }
}
