/**
 * Regions out of lines: what drawn lines enclose, with gaps closed and holes found, and what such regions are filled with.
 * Knows paths and regions on the sheet, and nothing of files, colours or pens.
 *
 * <p>Lines are brought onto a grid of 0.005 mm and cut wherever they meet ({@code LineGraph}); ends that fall short are
 * lengthened ({@code GapClosing}); the faces between the lines ({@code Faces}) are then chosen: by turns inside and
 * outside for a section cut ({@link org.adumbrate.linework.region.ClosedRegions}), by what is shut in for a veil
 * ({@link org.adumbrate.linework.region.Veils}).
 */
package org.adumbrate.linework.region;
