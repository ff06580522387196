/**
 * Lines cleaned at the size they are printed at: what is drawn twice is drawn once, what was broken is joined, what no print
 * can show is left out. Works on the lines of one pen at a time; what they depict, and what they are drawn with, is not known here.
 */
package org.adumbrate.linework.cleanup;
