/**
 * Lines that a file holds as filled outlines: thin shapes of constant width become lines of that width along their middle. Values in,
 * values out; knows outlines, and nothing of the files that they come from or of what else is on the page.
 */
package org.adumbrate.linework.outline;
