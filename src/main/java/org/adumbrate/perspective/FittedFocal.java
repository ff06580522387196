package org.adumbrate.perspective;

/**
 * The focal length as a depth pass and height lines tell it.
 *
 * @param focalMm at sheet scale
 * @param errorMm its standard error; 0 for one height line, which says nothing of it
 */
public record FittedFocal(double focalMm, double errorMm) {}
