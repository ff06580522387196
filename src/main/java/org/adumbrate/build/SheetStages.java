package org.adumbrate.build;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.cleanup.CleanUpSettings;
import org.adumbrate.linework.cleanup.Cleaned;
import org.adumbrate.linework.profile.DepthSpan;
import org.adumbrate.linework.profile.Fade;
import org.adumbrate.linework.profile.WeightedLines;
import org.adumbrate.raster.encode.StripEncoder.Packed;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.registration.Placement;
import org.adumbrate.sheetfile.Cut;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.SheetRegion;
import org.adumbrate.sheetfile.Veil;
import org.adumbrate.underlay.PassTones;

/** The stages of a sheet's build that are worth keeping, each with all that it depends on and nothing else. */
final class SheetStages {
    private final Reuse reuse;
    private final List<Object> base = new ArrayList<>();
    private final List<Object> sorting = new ArrayList<>();
    private final List<Object> seenThrough = new ArrayList<>();
    private final List<Object> depth = new ArrayList<>();
    private final List<Object> light = new ArrayList<>();

    private SheetStages(Reuse reuse) {
        this.reuse = reuse;
    }

    /** Makes everything anew. */
    static SheetStages anew() {
        return new SheetStages(Reuse.none());
    }

    /** @param size that of the sheet, settled */
    static SheetStages of(Sheet sheet, SheetSize size, Reuse reuse) {
        SheetStages stages = new SheetStages(reuse);
        stages.base.add(size);
        sheet.lines().forEach(file -> stages.base.add(List.of(file, reuse.digest(file.file()))));
        List<Object> sorting = stages.sorting;
        sorting.addAll(stages.base);
        sheet.heights().ifPresent(heights -> {
            sorting.add(List.of("heights", heights.color(), heights.lines(), reuse.digest(heights.lines())));
        });
        sheet.pens().forEach((name, pen) -> {
            sorting.add(List.of("pen", name, pen.color()));
            stages.seenThrough.add(pen.role());
        });
        sheet.cut().ifPresent(cut -> sorting.add(List.of("cut", cut.color())));
        sheet.veils().forEach((name, veil) -> {
            if (veil instanceof Veil.ByLines shown) {
                sorting.add(List.of("veil", name, shown.color(), shown.lines()));
                shown.lines().ifPresent(file -> sorting.add(reuse.digest(file)));
            }
        });
        stages.addDepth(sheet);
        stages.addLight(sheet);
        return stages;
    }

    /** A depth pass in metres: by where it lies and by what is known of the camera. */
    private void addDepth(Sheet sheet) {
        depth.addAll(sorting);
        depth.addAll(List.of(sheet.passes().depth(), sheet.camera(), sheet.floors(), sheet.heights()));
        sheet.passes().depth().ifPresent(pass -> depth.add(reuse.digest(pass.file())));
    }

    /** The underlay: by its passes, and where figures cast shadows by them and all that they stand in. */
    private void addLight(Sheet sheet) {
        light.addAll(base);
        light.add(sheet.passes());
        List<Path> passes = new ArrayList<>();
        sheet.passes().shadow().ifPresent(pass -> passes.add(pass.file()));
        sheet.passes().figureShadow().ifPresent(pass -> passes.add(pass.file()));
        sheet.passes().occlusion().ifPresent(pass -> passes.add(pass.file()));
        passes.forEach(pass -> light.add(reuse.digest(pass)));
        if (SheetScene.castsShadows(sheet)) {
            light.add(depth);
            sheet.cut().ifPresent(cut -> light.add(List.of(cut.gap(), cut.thinnest())));
            light.addAll(List.of(sheet.regions(), sheet.sun(), sheet.entourage(), sheet.figures()));
            Inputs.of(sheet).forEach(file -> light.add(reuse.digest(file)));
        }
    }

    /** The strokes by colour: by the files and the colours asked for, not by how these are drawn. */
    SortedLines sorted(Stages.Work<SortedLines> work) throws IOException {
        return reuse.of(Stage.SORTED_LINES, sorting, work);
    }

    /** What passes are placed by: the line sheets alone. */
    LinePattern pattern(Stages.Work<LinePattern> work) throws IOException {
        return reuse.of(Stage.PATTERN, base, work);
    }

    /** Where a pass is found by looking: by the line sheets and the pass. */
    Placement placement(Path pass, Stages.Work<Placement> work) throws IOException {
        return reuse.of(Stage.PLACEMENT, List.of(base, reuse.digest(pass)), work);
    }

    /** The tones of a pass. */
    PassTones tones(Path pass, Stages.Work<PassTones> work) throws IOException {
        return reuse.of(Stage.TONES, List.of(reuse.digest(pass)), work);
    }

    /** The cut. */
    CutDrawing cut(Cut asked, Stages.Work<CutDrawing> work) throws IOException {
        return reuse.of(Stage.CUT, List.of(sorting, asked), work);
    }

    /** The named regions: by what is asked and the rasters that are traced. */
    SheetRegions regions(Sheet sheet, SheetSize size, Stages.Work<SheetRegions> work) throws IOException {
        if (sheet.regions().isEmpty()) {
            return work.run();
        }
        List<Object> parts = new ArrayList<>(List.of(size));
        sheet.regions().forEach((name, region) -> {
            parts.add(List.of(name, region));
            if (region instanceof SheetRegion.ByColor color) {
                parts.add(reuse.digest(color.raster()));
            }
        });
        return reuse.of(Stage.REGIONS, parts, work);
    }

    /** The lines of a pen, cleaned: not by its width. */
    Cleaned cleaned(String name, CleanUpSettings settings, Stages.Work<Cleaned> work) throws IOException {
        return reuse.of(Stage.CLEANED_PENS, List.of(sorting, name, settings), work);
    }

    /** How far the lines of some pens reach in depth. */
    Optional<DepthSpan> span(List<String> pens, CleanUpSettings settings, Stages.Work<Optional<DepthSpan>> work)
            throws IOException {
        return reuse.of(Stage.DEPTH_OF_PENS, List.of(depth, pens, settings), work);
    }

    /** The lines of a pen by how far they fade. */
    List<WeightedLines> faded(String name, CleanUpSettings settings, Fade fade, Stages.Work<List<WeightedLines>> work)
            throws IOException {
        return reuse.of(Stage.FADED_PENS, List.of(depth, name, settings, fade), work);
    }

    /** The outline of the building: by the lines of its pens and the depth, not by its width. */
    List<VectorPath<SheetPoint>> profile(
            List<String> pens, CleanUpSettings settings, Stages.Work<List<VectorPath<SheetPoint>>> work)
            throws IOException {
        return reuse.of(Stage.PROFILE, List.of(depth, pens, settings), work);
    }

    /**
     * The strips of a picture of the underlay.
     *
     * @param as how they were packed
     */
    Optional<List<Packed>> strips(List<?> as) {
        return reuse.find(Stage.UNDERLAY, List.of(light, as));
    }

    /** Keeps the strips of a picture of the underlay. */
    void keepStrips(List<?> as, List<Packed> strips) {
        reuse.keep(Stage.UNDERLAY, List.of(light, as), strips);
    }

    /** What a veil covers, with stems or without: not how it covers it. */
    Region<SheetPoint> enclosed(String name, Veil.ByLines veil, boolean stems, Stages.Work<Region<SheetPoint>> work)
            throws IOException {
        return reuse.of(Stage.VEILS, List.of(sorting, seenThrough, name, veil.gap(), stems), work);
    }
}
