/**
 * What a clip leaves visible of a path: rectangles exactly, other outlines to within a few micrometres. Knows paths in
 * millimetres, and nothing of the files they come from.
 *
 * <p>A clip is an intersection of apertures, their borders included: a line that runs along a border is visible.
 */
package org.adumbrate.linework.clip;
