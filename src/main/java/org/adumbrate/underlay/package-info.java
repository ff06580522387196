/**
 * All printed passes merged into one raster at print resolution, strip by strip, in linear light. Where a pass lies
 * is told from outside; files and their formats are not known here.
 */
package org.adumbrate.underlay;
