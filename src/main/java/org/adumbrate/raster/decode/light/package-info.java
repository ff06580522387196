/**
 * From samples as stored to linear light: colour models, transfer curves, primaries, alpha over paper. Neither files nor
 * profiles are known here, so that each format can say by itself what its samples mean.
 */
package org.adumbrate.raster.decode.light;
