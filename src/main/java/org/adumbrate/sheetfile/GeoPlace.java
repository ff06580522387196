package org.adumbrate.sheetfile;

/**
 * A place on the earth.
 *
 * @param latitude north positive
 * @param longitude east positive
 */
@Written(asList = true)
public record GeoPlace(
        @Key(value = "North positive.", min = -90, max = 90) Degrees latitude,

        @Key(value = "East positive.", min = -180, max = 180)
        Degrees longitude) {}
