package org.adumbrate.sheetfile;

import java.time.OffsetDateTime;
import java.util.Optional;

/** Where the sun stands, in one of three ways. */
public sealed interface Sun {
    /**
     * By its angles.
     *
     * @param azimuth clockwise from north
     * @param altitude above the horizon
     * @param north clockwise from the model's +Y, seen from above
     */
    record ByAngles(
            @Key(value = "Clockwise from north.", min = 0, max = 360)
            Degrees azimuth,

            @Key(value = "Above the horizon.", above = 0, max = 90)
            Degrees altitude,

            @Key(
                    value = "North, clockwise from the model's +Y, seen from above.",
                    byDefault = "0 deg",
                    min = -360,
                    max = 360)
            Degrees north)
            implements Sun {}

    /**
     * By place and time.
     *
     * @param place on the earth
     * @param at date and time
     * @param north clockwise from the model's +Y, seen from above
     */
    record ByTime(
            @Key("[latitude, longitude] in degrees, north and east positive.")
            GeoPlace place,

            @Key("Date and time with the offset from UTC, such as 2026-06-21T15:00+02:00.")
            OffsetDateTime at,

            @Key(
                    value = "North, clockwise from the model's +Y, seen from above.",
                    byDefault = "0 deg",
                    min = -360,
                    max = 360)
            Degrees north)
            implements Sun {}

    /**
     * By one shadow on the drawing.
     *
     * @param sample an upright and its shadow
     * @param north clockwise from the model's +Y, seen from above; only to tell the azimuth
     */
    record BySample(
            @Key("An upright on the drawing and the tip of its shadow.")
            ShadowSample sample,

            @Key(value = "North, clockwise from the model's +Y, seen from above.", min = -360, max = 360)
            Optional<Degrees> north)
            implements Sun {}
}
