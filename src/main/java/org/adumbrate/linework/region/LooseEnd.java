package org.adumbrate.linework.region;

import org.adumbrate.geometry.SheetPoint;

/**
 * An end of a line that was joined with nothing, so that the line bounds nothing there.
 *
 * @param position where it lies on the sheet
 * @param gapMm how far the nearest other line or edge of the sheet is, in mm; infinite if there is none within 50 mm
 */
public record LooseEnd(SheetPoint position, double gapMm) {}
