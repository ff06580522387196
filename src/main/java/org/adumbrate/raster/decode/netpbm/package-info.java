/**
 * The reader of PBM, PGM, PPM and PAM, in text and in binary. Other rooms see
 * {@link org.adumbrate.raster.decode.netpbm.PnmReader} alone; no other format is known here.
 */
package org.adumbrate.raster.decode.netpbm;
