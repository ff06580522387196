package org.adumbrate.sheetfile;

import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;

/** Where the sun stands, in one of three ways. */
public sealed interface Sun permits Sun.ByAngles, Sun.ByTime, Sun.BySample {
    /**
     * Shadows on the drawing: what is known, where nothing else is; otherwise what the rest is checked against, and then
     * perhaps none.
     */
    List<ShadowSample> sample();

    /**
     * By its angles.
     *
     * @param azimuth clockwise from north
     * @param altitude above the horizon
     * @param north clockwise from the model's +Y, seen from above
     * @param sample shadows on the drawing that must agree with the angles
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
            Degrees north,

            @Key(
                    value = "Uprights on the drawing and the tips of their shadows, which must agree with the rest.",
                    oneOrMany = true)
            List<ShadowSample> sample)
            implements Sun {
        /** Copies the list. */
        public ByAngles {
            sample = List.copyOf(sample);
        }
    }

    /**
     * By place and time.
     *
     * @param place on the earth
     * @param at date and time
     * @param north clockwise from the model's +Y, seen from above
     * @param sample shadows on the drawing that must agree with place and time
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
            Degrees north,

            @Key(
                    value = "Uprights on the drawing and the tips of their shadows, which must agree with the rest.",
                    oneOrMany = true)
            List<ShadowSample> sample)
            implements Sun {
        /** Copies the list. */
        public ByTime {
            sample = List.copyOf(sample);
        }
    }

    /**
     * By shadows on the drawing.
     *
     * @param sample uprights and their shadows, at least one
     * @param north clockwise from the model's +Y, seen from above; only to tell the azimuth
     */
    record BySample(
            @Key(
                    value = "An upright on the drawing and the tip of its shadow, or a list of such.",
                    atLeast = 1,
                    oneOrMany = true)
            List<ShadowSample> sample,

            @Key(value = "North, clockwise from the model's +Y, seen from above.", min = -360, max = 360)
            Optional<Degrees> north)
            implements Sun {
        /** Copies the list. */
        public BySample {
            sample = List.copyOf(sample);
        }
    }
}
