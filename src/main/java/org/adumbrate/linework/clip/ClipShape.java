package org.adumbrate.linework.clip;

import org.adumbrate.geometry.PlanePoint;
import org.adumbrate.geometry.VectorPath;

/**
 * An outline to clip by.
 *
 * @param <P> the plane it lies in
 * @param outline each of its runs counts as closed
 * @param rule what counts as its inside
 */
public record ClipShape<P extends PlanePoint>(VectorPath<P> outline, FillRule rule) {}
