/**
 * What formats say in the same way of how a picture is to be shown: tagged fields of a TIFF directory, the Exif block made of them
 * (orientation), resolution. Colour lives in {@code icc} and {@code light}, and no format is known here.
 */
package org.adumbrate.raster.decode.metadata;
