/**
 * A sheet held open while its text changes: each text gives an edition, and a newer one takes the place of one that is still being made
 * ready. How a sheet is made ready is decided in {@code prepare}, and nothing here looks at a picture.
 */
package org.adumbrate.prepare.open;
