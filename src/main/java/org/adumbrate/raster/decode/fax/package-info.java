/**
 * Rows of facsimile codes as they stand in a TIFF: Modified Huffman, T.4 and T.6 (ITU-T). Only bits and rows are known here, not
 * where in a file they lie.
 */
package org.adumbrate.raster.decode.fax;
