/**
 * The sheet as it is delivered: underlay and layers brought together as PDF, SVG or pixels. What is drawn, and with
 * which pen, is told from outside.
 */
package org.adumbrate.drawing;
