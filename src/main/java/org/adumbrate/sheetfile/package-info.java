/**
 * The sheet file: what was asked, read strictly and checked, with file, line and column for every complaint.
 * Nothing here opens a pass or a line sheet, and nobody but build and cli looks in.
 */
package org.adumbrate.sheetfile;
