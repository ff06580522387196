/**
 * The front of the decoders: {@link org.adumbrate.raster.decode.RasterFiles} tells a raster file's format by its first bytes and
 * hands it to that format's reader, which tells size and colour from the head alone and then streams samples into a
 * {@link org.adumbrate.raster.SampleSink}, with a {@link org.adumbrate.raster.LightDecoder} that turns them into linear light.
 * Nothing here knows how a format is laid out, and no inner room knows this one; what is done with the pixels is not known in any.
 *
 * <p>Whatever a file holds, a caller sees pixels or an {@link org.adumbrate.fault.InputFault}. A size that a file states
 * is held against the bytes it has before memory is asked for.
 */
package org.adumbrate.raster.decode;
