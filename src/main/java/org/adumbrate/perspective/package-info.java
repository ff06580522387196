/**
 * From height lines, a stated camera and the sun to a view: where a point of the model lies on the sheet, how tall a person is
 * there, and which way the light falls. Works on values alone; no files, no pixels.
 */
package org.adumbrate.perspective;
