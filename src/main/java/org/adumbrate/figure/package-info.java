/**
 * Entourage in a view: outlines read and sized, placed on floors, hidden by what stands before them, and the light that
 * arrives past them. Knows nothing of sheet files; it is handed outlines, views and receivers.
 */
package org.adumbrate.figure;
