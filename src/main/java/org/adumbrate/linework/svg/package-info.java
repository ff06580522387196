/**
 * SVG to strokes, for line sheets, and to filled areas, for outlines: the only place that sees a parser of XML. What SVG shares
 * with other formats is gathered by {@code linework.page}; PDF is not known here.
 */
package org.adumbrate.linework.svg;
