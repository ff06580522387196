/**
 * How an image library is fed from a file and how its samples are taken as they come: a stream of two parts going in, a raster
 * that passes pixels on coming out. Which library decodes which format is not known here.
 */
package org.adumbrate.raster.decode.library;
