/**
 * Readers of raster files: each tells a file's size and colour from its head alone and then streams its samples into a
 * {@link org.adumbrate.raster.SampleSink}, with a {@link org.adumbrate.raster.LightDecoder} that turns them into linear
 * light. Image libraries are seen in this package only; what is done with the pixels is not known here.
 *
 * <p>Whatever a file holds, a caller sees pixels or an {@link org.adumbrate.fault.InputFault}. A size that a file states
 * is held against the bytes it has before memory is asked for.
 */
package org.adumbrate.raster.decode;
