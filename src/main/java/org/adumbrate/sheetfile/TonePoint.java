package org.adumbrate.sheetfile;

/**
 * A point of a tone curve, in linear light: 100 % is bare paper.
 *
 * @param in the pass's light
 * @param out the printed light
 */
@Written(asList = true)
public record TonePoint(
        @Key(value = "The pass's light.", min = 0, max = 100)
        Percent in,

        @Key(value = "The printed light.", min = 0, max = 100)
        Percent out) {}
