package org.adumbrate.linework.pdf;

import java.util.Optional;
import org.adumbrate.geometry.Srgb;

/**
 * What an area is painted with.
 *
 * @param color its colour; empty if it has many, or none that is known
 * @param alpha how much it covers, 0 to 1
 */
record PdfInk(Optional<Srgb> color, double alpha) {}
