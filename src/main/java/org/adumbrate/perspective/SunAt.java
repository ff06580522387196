package org.adumbrate.perspective;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;
import net.e175.klaus.solarpositioning.SolarPosition;
import net.e175.klaus.solarpositioning.SunriseResult;
import org.adumbrate.fault.Refusal;

/**
 * Where the sun stands at a place and a time (Reda and Andreas, "Solar Position Algorithm for Solar Radiation Applications",
 * NREL/TP-560-34302, 2003, revised 2008; right to 0.0003 degrees). Light is bent on its way through the air, and shadows
 * follow the light as it arrives: the altitude is that of the refracted sun, in air of 1010 hPa and 10 degrees C (Saemundsson's
 * formula; Meeus, "Astronomical Algorithms", 2nd ed. 1998, chapter 16), which lifts it by 0.24 degrees at an altitude of 3, by
 * 0.02 at 45.
 *
 * @param at the time
 * @param latitudeDeg of the place, north positive
 * @param longitudeDeg of the place, east positive
 * @param azimuthDeg clockwise from north, seen from above, 0 to 360
 * @param altitudeDeg above the horizon, refracted; below zero while the sun is down
 * @param airlessAltitudeDeg what it would be without air
 */
public record SunAt(
        OffsetDateTime at,
        double latitudeDeg,
        double longitudeDeg,
        double azimuthDeg,
        double altitudeDeg,
        double airlessAltitudeDeg) {
    private static final Air USUAL = new Air(0, 1010, 10);
    private static final int FIRST_YEAR = -1999;
    private static final int LAST_YEAR = 2999;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ROOT);

    /** The air at a place: its height above the sea in metres, its pressure in hPa, its temperature in degrees C. */
    record Air(double elevationM, double pressureHpa, double temperatureC) {}

    /**
     * The sun at a place and a time.
     *
     * @param at in the years -1999 to 2999, for which the earth's turning is known or can be estimated
     * @param latitudeDeg north positive, -90 to 90
     * @param longitudeDeg east positive, -180 to 180
     * @throws Refusal if the time lies outside these years
     * @throws IllegalArgumentException if there is no such place
     */
    public static SunAt of(OffsetDateTime at, double latitudeDeg, double longitudeDeg) throws Refusal {
        if (at.getYear() < FIRST_YEAR || at.getYear() > LAST_YEAR) {
            throw new Refusal("where the sun stands is known for the years " + FIRST_YEAR + " to " + LAST_YEAR
                    + ", not for " + at.getYear());
        }
        return of(at, latitudeDeg, longitudeDeg, USUAL, deltaT(at.toLocalDate()));
    }

    /** As above, in given air, and with given seconds between uniform time and the earth's turning. */
    static SunAt of(OffsetDateTime at, double latitudeDeg, double longitudeDeg, Air air, double deltaT) {
        if (!(Math.abs(latitudeDeg) <= 90 && Math.abs(longitudeDeg) <= 180)) {
            throw new IllegalArgumentException("there is no place at " + latitudeDeg + ", " + longitudeDeg);
        }
        ZonedDateTime time = at.toZonedDateTime();
        SolarPosition airless = SPA.calculateSolarPosition(time, latitudeDeg, longitudeDeg, air.elevationM(), deltaT);
        SolarPosition seen = SPA.calculateSolarPosition(
                time, latitudeDeg, longitudeDeg, air.elevationM(), deltaT, air.pressureHpa(), air.temperatureC());
        return new SunAt(
                at, latitudeDeg, longitudeDeg, seen.azimuth(), 90 - seen.zenithAngle(), 90 - airless.zenithAngle());
    }

    private static double deltaT(LocalDate date) {
        return DeltaT.estimate(date);
    }

    /** True while its middle stands above the horizon. */
    public boolean isUp() {
        return altitudeDeg > 0;
    }

    /**
     * The direction toward it.
     *
     * @param northDeg north, clockwise from the model's +Y, seen from above
     * @throws Refusal if the sun is down, and when it is up on that day
     */
    public SunDirection direction(double northDeg) throws Refusal {
        if (!isUp()) {
            throw new Refusal(String.format(
                    Locale.ROOT,
                    "at %s the sun stands %.1f degrees below the horizon of %.4f, %.4f and casts no shadow; %s",
                    at,
                    -altitudeDeg,
                    latitudeDeg,
                    longitudeDeg,
                    hours()));
        }
        return SunDirection.of(azimuthDeg, altitudeDeg, northDeg);
    }

    private String hours() {
        SunriseResult day = SPA.calculateSunriseTransitSet(
                at.toZonedDateTime(), latitudeDeg, longitudeDeg, deltaT(at.toLocalDate()));
        if (day instanceof SunriseResult.RegularDay regular) {
            return "on that day it rises at " + CLOCK.format(regular.sunrise()) + " and sets at "
                    + CLOCK.format(regular.sunset()) + " (" + at.getOffset() + ")";
        }
        return day instanceof SunriseResult.AllNight
                ? "it does not rise there on that day"
                : "choose another time of the day";
    }
}
