/**
 * What a vector line sheet is, whatever file it came from: strokes with their colour, width and dash in mm of the page, and how
 * a page goes onto the sheet. Nothing is read here; files have rooms of their own, and what the lines are drawn with in the end
 * is not known.
 */
package org.adumbrate.linework;
