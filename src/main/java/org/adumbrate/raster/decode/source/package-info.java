/**
 * The file being read and the words for its faults, with the limits that all formats share. No format is known
 * here.
 */
package org.adumbrate.raster.decode.source;
