/**
 * Outputs that are written aside and moved into place when they are whole: what stood there before stays until then, and
 * stays if anything fails. What is written is not known here.
 */
package org.adumbrate.output;
