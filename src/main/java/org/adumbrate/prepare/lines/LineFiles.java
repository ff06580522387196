package org.adumbrate.prepare.lines;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.PageFit;
import org.adumbrate.linework.read.LineSheets;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.prepare.memory.InParallel;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.sheetfile.Fit;
import org.adumbrate.sheetfile.LineFile;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.Veil;

/**
 * All vector files of a sheet, laid onto it.
 *
 * @param sheet the size of the sheet
 * @param base the line sheets, in the order of the sheet file
 * @param veils those that show what veils lie over, by the veil's name, where the sheet file names one
 * @param heights that which shows the height lines
 * @param content by what the line sheets on their sheet are known, whatever their colours are taken for
 * @param taken colours of the files that are taken for others that the sheet file states
 * @param colorFindings what there is to say of these
 */
public record LineFiles(
        SheetSize sheet,
        List<LaidLines> base,
        Map<String, LaidLines> veils,
        Optional<LaidLines> heights,
        List<Object> content,
        Map<Srgb, Srgb> taken,
        List<Finding> colorFindings) {
    /**
     * Reads them, each file once, all side by side.
     *
     * @param run knows those that have not changed
     * @throws Refusal if a page does not fit the sheet
     */
    public static LineFiles read(Sheet sheet, Run run) throws IOException, Refusal {
        Map<Path, LineSheet> read = readAll(files(sheet), run);
        SheetSize size =
                sheet.size().orElse(read.get(sheet.lines().get(0).file()).page());
        List<LaidLines> base = new ArrayList<>();
        for (LineFile file : sheet.lines()) {
            base.add(LaidLines.of(read.get(file.file()), size, fit(file.fit())));
        }
        Map<String, LaidLines> veils = new LinkedHashMap<>();
        for (Map.Entry<String, Veil> veil : sheet.veils().entrySet()) {
            if (veil.getValue() instanceof Veil.ByLines shown && shown.lines().isPresent()) {
                veils.put(veil.getKey(), LaidLines.of(read.get(shown.lines().get()), size, PageFit.SAME_RATIO));
            }
        }
        Optional<LaidLines> heights = Optional.empty();
        if (sheet.heights().isPresent()) {
            heights = Optional.of(LaidLines.of(read.get(sheet.heights().get().lines()), size, PageFit.SAME_RATIO));
        }
        List<Object> content = new ArrayList<>(List.of(size));
        sheet.lines().forEach(file -> content.add(List.of(file, run.digest(file.file()))));
        return recolored(new LineFiles(size, base, veils, heights, content, Map.of(), List.of()), sheet, run);
    }

    /** With colours taken for those that the sheet file states; veils and height lines have theirs in their own files. */
    private static LineFiles recolored(LineFiles files, Sheet sheet, Run run) throws IOException {
        Map<String, Srgb> stated = TakenColors.stated(sheet);
        Map<String, Srgb> wanted = new LinkedHashMap<>(stated);
        Map<String, LaidLines> veils = new LinkedHashMap<>();
        List<TakenColors> all = new ArrayList<>();
        for (Map.Entry<String, LaidLines> veil : files.veils.entrySet()) {
            String key = "veils." + veil.getKey();
            wanted.remove(key);
            TakenColors own = taken(List.of(veil.getValue()), Map.of(key, stated.get(key)), stated, run);
            veils.put(veil.getKey(), veil.getValue().recolored(own.colors()));
            all.add(own);
        }
        Optional<LaidLines> heights = files.heights;
        if (heights.isPresent()) {
            wanted.remove("heights");
            TakenColors own = taken(List.of(heights.get()), Map.of("heights", stated.get("heights")), stated, run);
            heights = heights.map(laid -> laid.recolored(own.colors()));
            all.add(own);
        }
        TakenColors own = taken(files.base, wanted, stated, run);
        all.add(own);
        List<LaidLines> base =
                files.base.stream().map(laid -> laid.recolored(own.colors())).toList();
        Map<Srgb, Srgb> taken = new LinkedHashMap<>();
        all.forEach(one -> taken.putAll(one.colors()));
        List<Finding> findings =
                all.stream().flatMap(one -> one.findings().stream()).toList();
        return new LineFiles(files.sheet, base, veils, heights, files.content, taken, findings);
    }

    private static TakenColors taken(List<LaidLines> files, Map<String, Srgb> wanted, Map<String, Srgb> stated, Run run)
            throws IOException {
        List<Object> from = new ArrayList<>();
        files.forEach(laid ->
                from.add(List.of(laid.lines().file(), run.digest(laid.lines().file()))));
        from.add(List.copyOf(wanted.entrySet()));
        from.add(List.copyOf(stated.entrySet()));
        return run.of(Part.LINE_COLORS, TakenColors.class, from, () -> TakenColors.of(files, wanted, stated));
    }

    /** What passes are placed by. */
    public PlacingLines placing(Run run) {
        return new PlacingLines(content, () -> pattern(run));
    }

    /** The same, made ready. */
    public LinePattern pattern(Run run) throws IOException {
        return run.of(Part.PATTERN, LinePattern.class, content, () -> LinePattern.of(paths()));
    }

    /** The paths of all line sheets. */
    public List<VectorPath<SheetPoint>> paths() {
        List<VectorPath<SheetPoint>> paths = new ArrayList<>();
        base.forEach(laid -> paths.addAll(laid.paths()));
        return paths;
    }

    /** What the files show that is not drawn; of those that show what veils lie over and height lines, nothing need be said. */
    public List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(colorFindings);
        for (int k = 0; k < base.size(); k++) {
            findings.addAll(LeftOutMarks.of(base.size() == 1 ? "lines" : "lines[" + k + "]", base.get(k)));
        }
        return findings;
    }

    /** The files that are read. */
    public static Set<Path> files(Sheet sheet) {
        Set<Path> files = new LinkedHashSet<>();
        sheet.lines().forEach(file -> files.add(file.file()));
        sheet.veils().values().forEach(veil -> {
            if (veil instanceof Veil.ByLines shown) {
                shown.lines().ifPresent(files::add);
            }
        });
        sheet.heights().ifPresent(heights -> files.add(heights.lines()));
        return files;
    }

    private static Map<Path, LineSheet> readAll(Set<Path> files, Run run) throws IOException {
        List<Callable<LineSheet>> tasks = new ArrayList<>();
        files.forEach(file -> tasks.add(() -> run.of(
                Part.LINE_SHEETS, LineSheet.class, List.of(file, run.digest(file)), () -> LineSheets.read(file))));
        List<LineSheet> sheets = InParallel.all(tasks);
        Map<Path, LineSheet> read = new HashMap<>();
        int k = 0;
        for (Path file : files) {
            read.put(file, sheets.get(k++));
        }
        return read;
    }

    private static PageFit fit(Fit fit) {
        return switch (fit) {
            case SCALE -> PageFit.SAME_RATIO;
            case FIT -> PageFit.FIT;
            case CROP -> PageFit.CROP;
        };
    }
}
