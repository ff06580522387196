/**
 * Vector line sheets: read from PDF and SVG as strokes with their colour, width and dash, in mm of the page. What
 * the lines are drawn with in the end, and rasters of any kind, are not known here.
 */
package org.adumbrate.linework;
