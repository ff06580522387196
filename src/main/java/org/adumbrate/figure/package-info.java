/**
 * Entourage in a view: outlines placed on floors, sized and turned, put in order of depth, and hidden by what stands before
 * them. Knows nothing of sheet files; it is handed outlines, views and depth passes.
 */
package org.adumbrate.figure;
