/**
 * Where each pass lies on the sheet: the affine map from its pixels to sheet millimetres, how it was found and how
 * far off it may be. Nothing here reads files or changes a pixel.
 */
package org.adumbrate.registration;
