/**
 * The file being read and the words in which its faults are told, with the limits that all formats share. No format is known
 * here.
 */
package org.adumbrate.raster.decode.source;
