package org.adumbrate.start;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.PageFit;
import org.adumbrate.output.FileClaims;
import org.adumbrate.output.OutputFile;
import org.adumbrate.perspective.FittedDepth;
import org.adumbrate.registration.LinePattern;
import org.adumbrate.sheetfile.reading.SheetFileReader;

/** Writes the first sheet file of a folder of exports. */
public final class Start {
    private static final String SUFFIX = ".sheet.yaml";

    private Start() {}

    /** Where the sheet file of a folder stands if nothing else is said: in it, and named as it is. */
    public static Path usual(Path folder) {
        Path name = folder.toAbsolutePath().normalize().getFileName();
        return folder.resolve((name == null ? "drawing" : name.toString()) + SUFFIX);
    }

    /**
     * Looks at what a folder holds and writes a sheet file that builds.
     *
     * @param folder the model's exports; folders in it are not looked into
     * @param file the sheet file to write
     * @throws Refusal if the file exists
     * @throws InputFault if the folder holds no line sheet
     */
    public static StartResult run(Path folder, Path file) throws IOException, Refusal {
        claims(folder, file).check();
        Draft draft = draft(folder);
        Path home = file.toAbsolutePath().getParent();
        String name = file.getFileName().toString().replaceFirst("(\\.sheet)?\\.ya?ml$", "");
        String text = DraftText.of(draft, home, name);
        try (OutputFile output = OutputFile.begin(file)) {
            output.stream().write(text.getBytes(StandardCharsets.UTF_8));
            output.stream().flush();
            SheetFileReader.read(output.aside());
            output.commit();
        }
        return Decisions.of(draft, file);
    }

    /**
     * The files that are read and written.
     *
     * @throws Refusal if the sheet file exists; a link counts, as paths are taken from the folder of the sheet file
     * @throws InputFault if there is no such folder
     */
    public static FileClaims claims(Path folder, Path file) throws IOException, Refusal {
        if (Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
            throw new Refusal(
                    file + ": is there already, and is not overwritten; name another with --output, or remove it");
        }
        return new FileClaims().reads(ExportFolder.claimed(folder)).writes(file, "--output");
    }

    private static Draft draft(Path folder) throws IOException, Refusal {
        ExportFolder found = ExportFolder.read(folder);
        if (found.sheets().isEmpty()) {
            String reason =
                    found.unused().isEmpty() ? "" : " (" + found.unused().get(0).reason() + ")";
            throw new InputFault(
                    folder, "holds no line sheet that can be read" + reason, "export the lines into it as PDF or SVG");
        }
        SheetRoles roles = SheetRoles.of(found.sheets());
        SheetSize size = PageName.of(roles.base().page()).size();
        Affine<PagePoint, SheetPoint> toSheet =
                PageFit.SAME_RATIO.onto(roles.base().page(), size);
        List<VectorPath<SheetPoint>> paths = roles.base().strokes().stream()
                .map(stroke -> stroke.path().transform(toSheet))
                .toList();
        DrawnView seen =
                roles.heights().isPresent() ? DrawnView.of(roles.heights().get(), toSheet, paths) : DrawnView.NOTHING;
        LinePattern pattern = LinePattern.of(paths);
        List<PassFile> passes = new ArrayList<>();
        List<Unused> unused = new ArrayList<>(found.unused());
        unused.addAll(roles.unused());
        for (Path raster : found.rasters()) {
            try {
                passes.add(PassFile.of(raster, pattern, size, seen.lines()));
            } catch (InputFault fault) {
                unused.add(Unused.of(raster, fault));
            }
        }
        Draft draft = new Draft(size, roles, seen, passes, Optional.empty(), DrawnSun.UNKNOWN, unused);
        return new Draft(size, roles, seen, passes, range(draft), DrawnSun.of(draft, pattern), unused);
    }

    private static Optional<FittedDepth> range(Draft draft) throws IOException {
        Optional<PassFile> depth = draft.best(PassKind.DEPTH);
        return depth.isPresent() && draft.seen().fitted().isPresent()
                ? DepthRange.of(depth.get(), draft.seen().lines(), draft.lensMm())
                : Optional.empty();
    }
}
