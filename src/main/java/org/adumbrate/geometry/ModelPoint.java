package org.adumbrate.geometry;

/**
 * A point of the model in metres, right-handed: x to the right, y into the drawing, z up; the section plane is y = 0.
 *
 * @param x metres to the right
 * @param y metres behind the section plane
 * @param z metres above elevation 0
 */
public record ModelPoint(double x, double y, double z) {}
