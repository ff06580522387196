/**
 * What readers of every format gather from a page: steps of a pen in the file's own coordinates become paths in mm of the page,
 * and stroked paths, less what clips hide, become the strokes of a sheet. No file format and no library that reads one is known
 * here.
 */
package org.adumbrate.linework.page;
