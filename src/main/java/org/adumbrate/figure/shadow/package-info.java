/**
 * The light that arrives past figures: figures as solids, the sun as a disc, and how much of the disc is hidden from each
 * place that is seen. Where figures stand and what their outlines are is told from outside; the building casts no shadow here.
 */
package org.adumbrate.figure.shadow;
