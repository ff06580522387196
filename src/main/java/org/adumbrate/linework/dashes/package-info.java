/**
 * Dashed lines out of strokes that a file holds dash by dash. Values in, values out; knows strokes, and nothing of the files that they
 * come from.
 *
 * <p>Many things are drawn with short lines one after the other: joints of bricks, bars of a window, a rail behind its balusters. What
 * makes a dashed line is a rhythm of dashes and gaps, and that the dashes do not end where other lines run.
 */
package org.adumbrate.linework.dashes;
