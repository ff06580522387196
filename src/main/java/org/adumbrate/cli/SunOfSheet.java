package org.adumbrate.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.adumbrate.fault.Refusal;
import org.adumbrate.json.Json;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.ShownSun;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.memory.StageClock;
import org.adumbrate.prepare.scene.SheetSun;
import org.adumbrate.sheetfile.Degrees;
import org.adumbrate.sheetfile.Sun;
import org.adumbrate.sheetfile.reading.SheetFile;
import org.adumbrate.sheetfile.reading.SheetFileReader;

/**
 * What the shadow pass of a sheet tells of the sun, in words and for machines.
 *
 * @param file the sheet file
 * @param shown what was read
 * @param northDeg north, clockwise from the model's +Y, if it is known
 * @param messages where the sheet file states another sun
 */
record SunOfSheet(Path file, ShownSun shown, OptionalDouble northDeg, List<String> messages) {
    /** A stated sun differs if it lies farther off than this, in degrees, and than so many standard deviations. */
    private static final double ONE_SUN_DEG = 1;

    private static final double SURE = 3;

    /** A camera that is so much less sure than the shadows is spoken of, in degrees. */
    private static final double NOTABLE_DEG = 0.5;

    /**
     * Reads the sun.
     *
     * @param north as the command line states it, before what the sheet file states
     * @throws Refusal if it cannot be read, or the focal length is not known
     */
    static SunOfSheet of(Path file, Optional<Double> north) throws IOException, Refusal {
        SheetFile asked = SheetFileReader.read(file);
        try (Run run = Memory.none().begin()) {
            PreparedSheet sheet = PreparedSheet.of(asked, run, new StageClock(StageClock.Listener.SILENT));
            ShownSun shown = ShownSun.of(sheet, run);
            if (!shown.focalKnown()) {
                throw new Refusal("camera", withoutFocal(shown));
            }
            OptionalDouble clockwise = north.or(() -> asked.sheet().sun().flatMap(SunOfSheet::north))
                    .map(OptionalDouble::of)
                    .orElse(OptionalDouble.empty());
            return new SunOfSheet(file, shown, clockwise, differences(asked, sheet, shown));
        } catch (Refusal reason) {
            throw reason.key().isEmpty()
                    ? reason
                    : new Refusal(
                            reason.key(),
                            asked.complaint(reason.key(), reason.getMessage()).toString());
        }
    }

    private static String withoutFocal(ShownSun shown) {
        return "the focal length is not known (a normal lens counts as supposed), and without it the sun's angles are not: state"
                + " camera.focal or camera.field-of-view"
                + shown.value()
                        .map(value -> "; for people's shadows on floors 'sun: " + value + "' says the same without it")
                        .orElse("");
    }

    private static Optional<Double> north(Sun sun) {
        if (sun instanceof Sun.ByAngles angles) {
            return Optional.of(angles.north().degrees());
        }
        return sun instanceof Sun.ByTime time
                ? Optional.of(time.north().degrees())
                : ((Sun.BySample) sun).north().map(Degrees::degrees);
    }

    private static List<String> differences(SheetFile asked, PreparedSheet sheet, ShownSun shown) throws Refusal {
        if (asked.sheet().sun().isEmpty()) {
            return List.of();
        }
        Sun stated = asked.sheet().sun().get();
        SunDirection direction = SheetSun.of(
                        stated,
                        sheet.drawing()
                                .orElseThrow()
                                .scene()
                                .camera()
                                .sunView(sheet.size())
                                .view())
                .direction();
        double apart = direction.degreesTo(shown.sun().direction());
        if (apart <= Math.max(ONE_SUN_DEG, SURE * shown.sun().errorDeg())) {
            return List.of();
        }
        String text = String.format(
                Locale.ROOT,
                "sun: what is stated lies %.1f degrees from the sun of the shadow pass: people's shadows will fall another way than"
                        + " the building's; put sun, its north or the camera right, or render the pass again",
                apart);
        return List.of(asked.complaint("sun", text).toString());
    }

    String words() {
        SunDirection sun = shown.sun().direction();
        String from = northDeg.isPresent() ? "north" : "the model's +Y, seen from above";
        String ask = northDeg.isPresent()
                ? ""
                : "  where north lies is not known, so the azimuth counts from +Y; state sun.north, or give --north"
                        + System.lineSeparator();
        return String.format(
                Locale.ROOT,
                "azimuth %.1f degrees clockwise from %s, altitude %.1f degrees above the horizon, give or take %.1f%n%s%s"
                        + "  an upright of 1 m casts a shadow of %.2f m on level ground%n"
                        + "  estimated from the shadow pass by the stated camera: %d lines on floors and %d on walls show it%n"
                        + "  where the sun is known, state that instead%n",
                sun.azimuthDeg(northDeg.orElse(0)),
                from,
                sun.altitudeDeg(),
                shown.sun().errorDeg(),
                centred(),
                ask,
                sun.shadowPerMetre(),
                shown.sun().onFloors(),
                shown.sun().onWalls());
    }

    /** Why the angles are less sure than the shadows show them. */
    private String centred() {
        return shown.sun().errorDeg() < shown.exactErrorDeg() + NOTABLE_DEG
                ? ""
                : String.format(
                        Locale.ROOT,
                        "  give or take %.1f if the camera is exactly as stated; it is centred on the middle of the sheet, which start%n"
                                + "  supposes of any two-point view: state its true principal-point, focal and turn%n",
                        shown.exactErrorDeg());
    }

    Map<String, Object> json() {
        SunDirection sun = shown.sun().direction();
        return Json.object(
                "file", file,
                "azimuthDeg", sun.azimuthDeg(northDeg.orElse(0)),
                "altitudeDeg", sun.altitudeDeg(),
                "errorDeg", shown.sun().errorDeg(),
                "northKnown", northDeg.isPresent(),
                "shadowPerMetre", sun.shadowPerMetre(),
                "messages", messages);
    }
}
