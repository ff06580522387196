/**
 * The first sheet file of a folder of exports: what each file is, told by its content; how the drawing is seen; and the
 * text that says so, with comments on what could not be decided. Nothing is drawn here.
 */
package org.adumbrate.start;
