package org.adumbrate.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import org.adumbrate.delivery.BuildResult;
import org.adumbrate.delivery.Merge;
import org.adumbrate.delivery.MergeRequest;
import org.adumbrate.delivery.PictureRequest;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.prepare.passes.PassRequest;
import org.adumbrate.sheetfile.form.PaperSize;
import org.adumbrate.underlay.PassLook;
import org.adumbrate.underlay.PassRole;
import picocli.CommandLine.Command;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import picocli.CommandLine.TypeConversionException;

/** Merges passes into an underlay without a sheet file. */
@Command(
        name = "merge",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Merge render passes into one print-resolution underlay, without a sheet file.",
            "With LINES the passes are placed by them; without, by their ratio alone, and --size says how large."
        },
        footer = {
            "",
            "Examples:",
            "  adumbrate merge passes/kiln-yard/lines.pdf --shadow passes/kiln-yard/shadow.jpg \\",
            "      --occlusion passes/kiln-yard/occlusion.png --output out/underlay.tif",
            "  adumbrate merge --size 17x11in --shadow passes/kiln-yard/shadow.jpg --opacity shadow=50 \\",
            "      --output out/shadow-only.png"
        })
final class MergeCommand implements Callable<Integer> {
    private static final Map<PassRole, Integer> DEFAULT_OPACITY =
            Map.of(PassRole.SHADOW, 60, PassRole.OCCLUSION, 45, PassRole.FIGURE_SHADOW, 60);

    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Parameters(index = "0", arity = "0..1", paramLabel = "LINES", description = "The line sheet, PDF or SVG.")
    private Path lines;

    @Option(names = "--shadow", paramLabel = "FILE", description = "The sun-shadow render.")
    private Path shadow;

    @Option(names = "--occlusion", paramLabel = "FILE", description = "The ambient-occlusion render.")
    private Path occlusion;

    @Option(names = "--figure-shadow", paramLabel = "FILE", description = "The shadows of the figures.")
    private Path figureShadow;

    @Option(
            names = "--opacity",
            split = ",",
            paramLabel = "PASS=PERCENT",
            description =
                    "How strongly each pass darkens, 0 to 100; shadow=60,occlusion=45,figure-shadow=60 if not said.")
    private Map<String, Double> opacity = Map.of();

    @Option(
            names = "--size",
            paramLabel = "SIZE",
            converter = SizeConverter.class,
            description =
                    "The printed size, such as 17x11in, 420x297mm or \"A3 landscape\"; the page of LINES if not said.")
    private SheetSize size;

    @Option(
            names = "--dpi",
            paramLabel = "N",
            description = "Pixels per inch, 36 to 2400; ${DEFAULT-VALUE} if not said.")
    private double dpi = 300;

    @Option(
            names = "--white",
            paramLabel = "measured|as-is",
            description = "Whether each pass's lit white is measured and becomes bare paper; measured if not said.")
    private String white = "measured";

    @Option(names = "--no-dither", description = "Round 8-bit samples to the nearest level instead of dithering them.")
    private boolean noDither;

    @Option(names = "--bits", paramLabel = "8|16", description = "Bits of a sample; ${DEFAULT-VALUE} if not said.")
    private int bits = 8;

    @Option(
            names = "--compression",
            paramLabel = "1..9",
            description = "Effort of the compression, 1 (fast) to 9 (small).")
    private Integer compression;

    @Option(
            names = "--output",
            required = true,
            paramLabel = "FILE",
            description = "The underlay to write: .tif or .png.")
    private Path output;

    @Override
    public Integer call() throws IOException, Refusal {
        check();
        OptionalInt level = compression == null ? OptionalInt.empty() : OptionalInt.of(compression);
        PictureRequest picture = new PictureRequest(output, bits, level, !noDither, OptionalInt.empty());
        MergeRequest request =
                new MergeRequest(Optional.ofNullable(lines), Optional.ofNullable(size), dpi, passes(), picture);
        common.guard(request.claims());
        BuildResult result = Merge.run(request, common.progress());
        common.tell(result);
        common.writeJson(Results.of(result));
        return ExitCode.DONE;
    }

    private void check() {
        require(lines != null || size != null, "give LINES or --size, so that the printed size is known");
        require(
                shadow != null || occlusion != null || figureShadow != null,
                "name a pass: --shadow, --occlusion or both");
        require(dpi >= 36 && dpi <= 2400, "--dpi must be 36 to 2400");
        require(bits == 8 || bits == 16, "--bits must be 8 or 16");
        require(compression == null || (compression >= 1 && compression <= 9), "--compression must be 1 to 9");
        require(white.equals("measured") || white.equals("as-is"), "--white must be measured or as-is");
        require(
                output.toString().matches("(?i).*\\.(tif|tiff|png)"),
                "--output must end in .tif, .tiff or .png, not " + output.getFileName());
        for (Map.Entry<String, Double> entry : opacity.entrySet()) {
            require(
                    List.of("shadow", "occlusion", "figure-shadow").contains(entry.getKey()),
                    "--opacity knows shadow, occlusion and figure-shadow, not " + entry.getKey());
            double percent = entry.getValue();
            require(percent >= 0 && percent <= 100, "--opacity must be 0 to 100 percent");
            require(
                    percent == 0 || percent > 1,
                    "--opacity is in percent: " + entry.getKey() + "=" + Numbers.plain(percent)
                            + " would hardly show; did you mean " + Numbers.plain(100 * percent) + "?");
        }
    }

    private void require(boolean condition, String complaint) {
        if (!condition) {
            throw new ParameterException(spec.commandLine(), complaint);
        }
    }

    private List<PassRequest> passes() {
        List<PassRequest> passes = new ArrayList<>();
        add(passes, PassRole.SHADOW, "shadow", shadow);
        add(passes, PassRole.FIGURE_SHADOW, "figure-shadow", figureShadow);
        add(passes, PassRole.OCCLUSION, "occlusion", occlusion);
        return passes;
    }

    private void add(List<PassRequest> passes, PassRole role, String name, Path file) {
        if (file != null) {
            double percent = opacity.getOrDefault(name, (double) DEFAULT_OPACITY.get(role));
            boolean measures = white.equals("measured") && role != PassRole.FIGURE_SHADOW;
            passes.add(new PassRequest(role, file, PassLook.plain(percent / 100), measures, Optional.empty()));
        }
    }

    /** Reads a printed size as the sheet file does. */
    static final class SizeConverter implements ITypeConverter<SheetSize> {
        @Override
        public SheetSize convert(String text) {
            return PaperSize.parse(text)
                    .orElseThrow(() -> new TypeConversionException(
                            "'" + text + "' is no size; write 17x11in, 420x297mm or \"A3 landscape\""));
        }
    }
}
