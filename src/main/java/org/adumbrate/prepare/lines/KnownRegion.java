package org.adumbrate.prepare.lines;

import java.util.List;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;

/**
 * A region of the sheet.
 *
 * @param content by what it is known: what the sheet file states, and the content of a raster that it is traced from
 * @param region what it covers
 */
public record KnownRegion(List<Object> content, Region<SheetPoint> region) {}
