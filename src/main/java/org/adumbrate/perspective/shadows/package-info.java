/**
 * The sun by the shadows that a building casts on itself, from edges that were found on the sheet and the view alone. Pixels and files are
 * not known here.
 */
package org.adumbrate.perspective.shadows;
