/**
 * PDF line sheets to strokes, and the only place beside the drawing that sees the PDF library. What PDF shares with other
 * formats is gathered by {@code linework.page}; SVG is not known here.
 */
package org.adumbrate.linework.pdf;
