package org.adumbrate.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.adumbrate.delivery.SheetClaims;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.json.Json;
import org.adumbrate.output.FileClaims;
import org.adumbrate.perspective.FittedSun;
import org.adumbrate.perspective.SunAt;
import org.adumbrate.perspective.SunCheck;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.SunFit;
import org.adumbrate.perspective.SunSample;
import org.adumbrate.perspective.View;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Tells where the sun stands: at a place and a time, or by the shadows on a drawing. */
@Command(
        name = "sun",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        description = {
            "Tell where the sun stands at a place and a time, or where it stands by shadows that are drawn: the foot and the",
            "head of any upright and the tip of its shadow, all on one level floor. With both, whether they agree.",
            "Or read it from the building's own shadows in the shadow pass of a sheet: an estimate from a picture, which gives way to",
            "a sun that is known.",
            "Shadow pictures made with it are illustrations. Permits and claims about daylight are for local codes and",
            "licensed practice."
        },
        footer = {
            "",
            "Examples:",
            "  adumbrate sun --place 41.5,-30.25 --at 2026-09-22T16:00-02:00",
            "  adumbrate sun --place 41.5,-30.25 --at 2026-09-22T16:00-02:00 --north 24",
            "  adumbrate sun --sample \"334.8,228.3 334.8,195.4 339.7,221.4\" --focal 260 --principal 214,150.5 --north 24",
            "  adumbrate sun --sheet passes/kiln-yard/kiln-yard.sheet.yaml"
        })
final class SunCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec;

    @Mixin
    private CommonOptions common;

    @ArgGroup(exclusive = false, heading = "%nBy place and time:%n")
    private ByTime byTime;

    @ArgGroup(exclusive = false, heading = "%nBy shadows on the drawing:%n")
    private ByShadows byShadows;

    @Option(
            names = "--sheet",
            paramLabel = "FILE.sheet.yaml",
            description = "Read the sun from the shadow pass of this sheet. Its camera must be known.")
    private Path sheet;

    @Option(
            names = "--north",
            paramLabel = "DEG",
            description = {
                "North, clockwise from the model's +Y, seen from above; 0 where left out, with --sheet what the sheet file",
                "states."
            })
    private Double northStated;

    /** A place on the earth. */
    record LatitudeLongitude(double latitudeDeg, double longitudeDeg) {}

    private static final class ByTime {
        @Option(
                names = "--place",
                required = true,
                paramLabel = "LAT,LON",
                converter = Converters.Place.class,
                description = "Latitude and longitude in degrees, north and east positive, such as 41.5,-30.25.")
        private LatitudeLongitude place;

        @Option(
                names = "--at",
                required = true,
                paramLabel = "TIME",
                converter = Converters.Time.class,
                description = "Date and time with the offset from UTC, such as 2026-06-21T15:00+02:00.")
        private OffsetDateTime at;

        private SunDirection sun(double northDeg) throws Refusal {
            return SunAt.of(at, place.latitudeDeg(), place.longitudeDeg()).direction(northDeg);
        }
    }

    private static final class ByShadows {
        @Option(
                names = "--sample",
                required = true,
                paramLabel = "FX,FY HX,HY TX,TY",
                converter = Converters.Shadow.class,
                description = "Foot, head and shadow tip of an upright in mm of the sheet, in quotes; may be repeated.")
        private List<SunSample> samples = new ArrayList<>();

        @Option(
                names = "--focal",
                required = true,
                paramLabel = "MM",
                description = "The focal length at the sheet's scale.")
        private double focal;

        @Option(
                names = "--principal",
                required = true,
                paramLabel = "X,Y",
                converter = Converters.Point.class,
                description = "Where the viewing direction meets the sheet, in mm; its y is the horizon.")
        private SheetPoint principal;

        @Option(
                names = "--turn",
                paramLabel = "DEG",
                description =
                        "The viewing direction, clockwise from the model's +Y, seen from above; 0 where left out.")
        private double turn;

        /** The view, from an eye at 1 m: how high it is has no part in where the sun stands. */
        private View view() {
            return new View(focal, principal, 1, Math.toRadians(turn));
        }
    }

    @Override
    public Integer call() throws IOException, Refusal {
        check();
        if (sheet != null) {
            return ofSheet();
        }
        common.guard(new FileClaims());
        double north = north();
        Optional<FittedSun> drawn =
                byShadows == null ? Optional.empty() : Optional.of(SunFit.of(byShadows.samples, byShadows.view()));
        SunDirection sun = byTime == null ? drawn.orElseThrow().direction() : byTime.sun(north);
        List<String> messages = drawn.isPresent() ? messages(sun, drawn.get()) : List.of();
        if (common.printsForPeople()) {
            print(sun, drawn);
        }
        common.writeJson(json(sun, drawn, messages));
        messages.forEach(common.err()::println);
        return messages.isEmpty() ? ExitCode.DONE : ExitCode.REFUSED;
    }

    private int ofSheet() throws IOException, Refusal {
        common.guard(SheetClaims.looking(sheet));
        SunOfSheet shown = SunOfSheet.of(sheet, Optional.ofNullable(northStated));
        if (common.printsForPeople()) {
            common.out().print(shown.words());
        }
        common.writeJson(shown.json());
        shown.messages().forEach(common.err()::println);
        return shown.messages().isEmpty() ? ExitCode.DONE : ExitCode.REFUSED;
    }

    private double north() {
        return northStated == null ? 0 : northStated;
    }

    private List<String> messages(SunDirection sun, FittedSun drawn) throws Refusal {
        List<String> messages = new ArrayList<>();
        SunCheck.among(byShadows.samples, drawn).ifPresent(messages::add);
        if (byTime != null) {
            SunCheck.of(sun, byShadows.samples, byShadows.view(), north()).ifPresent(messages::add);
        }
        return messages;
    }

    private void check() {
        require(
                byTime != null || byShadows != null || sheet != null,
                "give --place and --at, or --sample with --focal and --principal, or --sheet");
        require(
                sheet == null || (byTime == null && byShadows == null),
                "--sheet goes with neither --place nor --sample: the sheet file states what it is held against");
        require(Double.isFinite(north()), "--north must be a number of degrees");
        require(
                byShadows == null || (byShadows.focal > 0 && Double.isFinite(byShadows.focal)),
                "--focal must be a number of mm above zero");
        require(byShadows == null || Double.isFinite(byShadows.turn), "--turn must be a number of degrees");
    }

    private void require(boolean condition, String complaint) {
        if (!condition) {
            throw new ParameterException(spec.commandLine(), complaint);
        }
    }

    private void print(SunDirection sun, Optional<FittedSun> drawn) {
        common.out()
                .printf(
                        Locale.ROOT,
                        "azimuth %.2f degrees clockwise from north, altitude %.2f degrees above the horizon%n"
                                + "  an upright of 1 m casts a shadow of %.2f m on level ground%n",
                        sun.azimuthDeg(north()),
                        sun.altitudeDeg(),
                        sun.shadowPerMetre());
        drawn.filter(fitted -> fitted.residualsMm().size() > 1).ifPresent(fitted -> common.out()
                .printf(
                        Locale.ROOT,
                        "  the tips of %d shadows lie up to %.2f mm from where one sun casts them%n",
                        fitted.residualsMm().size(),
                        fitted.worstMm()));
    }

    private Map<String, Object> json(SunDirection sun, Optional<FittedSun> drawn, List<String> messages) {
        Map<String, Object> result = Json.object(
                "azimuthDeg",
                sun.azimuthDeg(north()),
                "altitudeDeg",
                sun.altitudeDeg(),
                "shadowPerMetre",
                sun.shadowPerMetre());
        drawn.ifPresent(fitted -> result.put("residualsMm", fitted.residualsMm()));
        result.put("messages", messages);
        return result;
    }
}
