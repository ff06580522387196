package org.adumbrate.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import org.adumbrate.fault.InputFault;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.geometry.Space;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.LineSheets;
import org.adumbrate.perspective.FittedFloor;
import org.adumbrate.perspective.FittedHeights;
import org.adumbrate.perspective.HeightFit;
import org.adumbrate.perspective.HeightLine;
import org.adumbrate.perspective.HeightLines;
import org.adumbrate.perspective.Stated;
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
            paramLabel = "NAME=METRES",
            description = "The elevations of the floors, if they are known; they tie the floors to one eye height.")
    private Map<String, Double> floors = new LinkedHashMap<>();

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

    /** A figure asked for. */
    private record Figure(FittedFloor floor, SheetPoint foot, SheetPoint head) {}

    @Override
    public Integer call() throws IOException, Refusal {
        check();
        LineSheet sheet = LineSheets.read(lines);
        Stated stated = new Stated(
                horizon == null ? OptionalDouble.empty() : OptionalDouble.of(horizon), floors, OptionalDouble.empty());
        FittedHeights fitted = fit(sheet, stated);
        Optional<Figure> figure = at == null ? Optional.empty() : Optional.of(figure(fitted));
        if (common.printsForPeople()) {
            print(fitted);
            figure.ifPresent(this::print);
        }
        common.writeJson(json(sheet, fitted, figure));
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

    private FittedHeights fit(LineSheet sheet, Stated stated) throws IOException, Refusal {
        List<HeightLine> uprights =
                HeightLines.of(sheet.strokes(), color, Affine.scaling(Space.PAGE, Space.SHEET, 1, 1));
        if (uprights.isEmpty()) {
            String colors = sheet.tally().stream()
                    .map(tally -> tally.color().toString())
                    .collect(Collectors.joining(" "));
            throw new InputFault(lines, "shows no upright in " + color, "its colours are " + colors);
        }
        try {
            return HeightFit.of(uprights, height.m(), stated);
        } catch (Refusal refusal) {
            throw new Refusal(lines + ": " + refusal.getMessage());
        }
    }

    private Figure figure(FittedHeights fitted) throws Refusal {
        FittedFloor on;
        if (floor == null) {
            on = fitted.floorAt(at);
        } else {
            String known = fitted.floors().stream().map(FittedFloor::name).collect(Collectors.joining(", "));
            on = fitted.floor(floor)
                    .orElseThrow(() -> new Refusal("there is no floor '" + floor + "'; there are " + known));
        }
        double tall = stature == null ? height.m() : stature.m();
        return new Figure(on, at, fitted.figure(at, tall, on));
    }

    private void print(FittedHeights fitted) {
        common.out()
                .printf(
                        Locale.ROOT,
                        "%s: horizon at %.2f mm, give or take %.2f mm%n",
                        lines,
                        fitted.horizonMm(),
                        fitted.horizonErrorMm());
        for (FittedFloor one : fitted.floors()) {
            common.out()
                    .printf(
                            Locale.ROOT,
                            "  %-12s eye %7.3f m above it, give or take %.3f m; %d lines, off by %.2f mm rms%n",
                            one.name(),
                            one.eyeHeightM(),
                            one.eyeHeightErrorM(),
                            one.lines().size(),
                            one.rmsMm());
        }
        for (HeightLine stray : fitted.outliers()) {
            common.out()
                    .printf(
                            Locale.ROOT,
                            "  left out: the line at (%.1f, %.1f), %.1f mm tall, fits no floor%n",
                            stray.foot().x(),
                            stray.foot().y(),
                            stray.heightMm());
        }
    }

    private void print(Figure figure) {
        common.out()
                .printf(
                        Locale.ROOT,
                        "  a figure of %s m at (%.2f, %.2f) on %s is %.2f mm tall; its head is at y %.2f%n",
                        Numbers.plain(stature == null ? height.m() : stature.m()),
                        figure.foot().x(),
                        figure.foot().y(),
                        figure.floor().name(),
                        figure.foot().y() - figure.head().y(),
                        figure.head().y());
    }

    private Map<String, Object> json(LineSheet sheet, FittedHeights fitted, Optional<Figure> figure) {
        Map<String, Object> result = Results.object(
                "sheet",
                Results.sheet(lines, sheet.page()),
                "horizonMm",
                fitted.horizonMm(),
                "horizonErrorMm",
                fitted.horizonErrorMm(),
                "floors",
                fitted.floors().stream().map(HeightsCommand::json).toList(),
                "outliersMm",
                fitted.outliers().stream()
                        .map(line -> List.of(json(line.foot()), json(line.head())))
                        .toList());
        figure.ifPresent(one -> {
            result.put("floor", one.floor().name());
            result.put("footMm", json(one.foot()));
            result.put("headMm", json(one.head()));
        });
        return result;
    }

    private static Map<String, Object> json(FittedFloor one) {
        return Results.object(
                "name", one.name(),
                "eyeHeightM", one.eyeHeightM(),
                "eyeHeightErrorM", one.eyeHeightErrorM(),
                "lines", one.lines().size(),
                "rmsMm", one.rmsMm(),
                "outliers", one.outliers().size());
    }

    private static List<Double> json(SheetPoint point) {
        return List.of(point.x(), point.y());
    }
}
