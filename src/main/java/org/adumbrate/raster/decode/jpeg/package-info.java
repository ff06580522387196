/**
 * The JPEG reader: segments and frame are read here (ITU-T T.81), and the scans by the platform's decoder. TIFF asks for the
 * heads of the JPEG pictures in its strips; no other format is known here.
 */
package org.adumbrate.raster.decode.jpeg;
