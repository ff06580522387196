package org.adumbrate.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.adumbrate.fault.InputFault;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.read.LineSheets;
import org.adumbrate.linework.sort.ColorTally;
import org.adumbrate.output.FileClaims;
import org.adumbrate.perspective.FittedFloor;
import org.adumbrate.perspective.FittedHeights;
import org.adumbrate.perspective.HeightFit;
import org.adumbrate.perspective.HeightLine;
import org.adumbrate.perspective.HeightLines;
import org.adumbrate.perspective.Stated;
import org.adumbrate.perspective.VanishingSearch;
import org.adumbrate.sheetfile.Metres;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Fits horizon and floors to height lines, and tells how large a figure is. */
@Command(
        name = "heights",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Find the horizon and the floors from lines of a known height, such as that of a person, that stand on the",
            "floors; and with --at, how large a figure of any stature is seen there. Floors are told apart by themselves.",
            "Lines that are hidden in part or fit no floor are told and left out."
        },
        footer = {
            "",
            "Examples:",
            "  adumbrate heights passes/kiln-yard/lines-people-height.pdf --color \"#e60028\" --height 1.65m",
            "  adumbrate heights passes/kiln-yard/lines-people-height.pdf --color \"#e60028\" --height 1.65m \\",
            "      --floors yard=0,studio=0.15,terrace=0.75,upper=3.35 --at 334.8,228.3 --stature 1.8m --floor yard"
        })
final class HeightsCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @Parameters(index = "0", paramLabel = "LINES", description = "The line sheet that shows them, PDF or SVG.")
    private Path lines;

    @Option(
            names = "--color",
            required = true,
            paramLabel = "#RRGGBB",
            converter = Converters.Color.class,
            description = "The stroke colour of the height lines.")
    private Srgb color;

    @Option(
            names = "--height",
            required = true,
            paramLabel = "LENGTH",
            converter = Converters.ModelLength.class,
            description = "How tall each of them is, such as 1.65m.")
    private Metres height;

    @Option(
            names = "--horizon",
            paramLabel = "MM",
            description = "The sheet y of the horizon, if it is known; two lines on a floor are enough then.")
    private Double horizon;

    @Option(
            names = "--floors",
            split = ",",
            paramLabel = "NAME=LENGTH",
            converter = {Converters.Word.class, Converters.ModelLength.class},
            description = "The elevations of the floors, if they are known; they tie the floors to one eye height.")
    private Map<String, Metres> floors = Map.of();

    @Option(
            names = "--at",
            paramLabel = "X,Y",
            converter = Converters.Point.class,
            description = "Where a figure stands, in mm of the sheet.")
    private SheetPoint at;

    @Option(
            names = "--stature",
            paramLabel = "LENGTH",
            converter = Converters.ModelLength.class,
            description = "How tall the figure is, such as 1.70m; as tall as the lines if not said.")
    private Metres stature;

    @Option(
            names = "--floor",
            paramLabel = "NAME",
            description = "The floor that the figure stands on; only needed where several may be seen at the point.")
    private String floor;

    @Override
    public Integer call() throws IOException, Refusal {
        check();
        common.guard(new FileClaims().reads(lines));
        LineSheet sheet = LineSheets.read(lines);
        FittedHeights fitted = fit(sheet);
        HeightsReport report =
                new HeightsReport(sheet, fitted, at == null ? Optional.empty() : Optional.of(figure(fitted)));
        if (common.printsForPeople()) {
            report.print(common.out());
        }
        common.writeJson(report.json());
        return ExitCode.DONE;
    }

    private void check() {
        require(height.m() > 0, "--height must be above zero");
        require(horizon == null || Double.isFinite(horizon), "--horizon must be a number of mm");
        require(at != null || (stature == null && floor == null), "--stature and --floor need --at");
        require(stature == null || stature.m() > 0, "--stature must be above zero");
    }

    private void require(boolean condition, String complaint) {
        if (!condition) {
            throw new ParameterException(spec.commandLine(), complaint);
        }
    }

    private FittedHeights fit(LineSheet sheet) throws IOException, Refusal {
        Affine<PagePoint, SheetPoint> toSheet = Affine.scaling(Space.PAGE, Space.SHEET, 1, 1);
        List<HeightLine> uprights = HeightLines.of(sheet.strokes(), color, toSheet);
        if (uprights.isEmpty()) {
            String colors = ColorTally.of(sheet).stream()
                    .map(tally -> tally.color().toString())
                    .collect(Collectors.joining(" "));
            throw new InputFault(lines, "shows no upright in " + color, "its colours are " + colors);
        }
        try {
            return HeightFit.of(
                    uprights,
                    height.m(),
                    stated(),
                    VanishingSearch.of(HeightLines.others(sheet.strokes(), color, toSheet)));
        } catch (Refusal refusal) {
            throw new Refusal(lines + ": " + refusal.getMessage());
        }
    }

    private HeightsReport.FigureHeight figure(FittedHeights fitted) throws Refusal {
        FittedFloor on;
        if (floor == null) {
            on = fitted.floorAt(at);
        } else {
            String known = fitted.floors().stream().map(FittedFloor::name).collect(Collectors.joining(", "));
            on = fitted.floor(floor)
                    .orElseThrow(() -> new Refusal("there is no floor '" + floor + "'; there are " + known));
        }
        double tall = stature == null ? height.m() : stature.m();
        return new HeightsReport.FigureHeight(on, tall, at, fitted.figure(at, tall, on));
    }

    private Stated stated() {
        Map<String, Double> elevations = new LinkedHashMap<>();
        floors.forEach((name, elevation) -> elevations.put(name, elevation.m()));
        OptionalDouble known = horizon == null ? OptionalDouble.empty() : OptionalDouble.of(horizon);
        return new Stated(known, elevations, OptionalDouble.empty());
    }
}
