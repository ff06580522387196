/**
 * The sheet as it is delivered: underlay and lines brought together as PDF, SVG or preview. What is drawn, and with
 * which pen, is told from outside.
 */
package org.adumbrate.drawing;
