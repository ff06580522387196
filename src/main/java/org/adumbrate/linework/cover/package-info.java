/**
 * What areas that are painted later hide of strokes: values in, values out. Knows strokes, outlines and the order in which they are
 * painted, and nothing of the files that they come from.
 *
 * <p>A stroke is hidden where both its flanks are, 0.01 mm to either side of its middle: so a line along the rim of an area
 * is seen, and a line along the seam between two areas that meet is not.
 */
package org.adumbrate.linework.cover;
