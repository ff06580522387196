/**
 * Reads a sheet file strictly, and checks what its values owe each other, on whatever could be read, so that one run finds all.
 * Nothing here opens a pass or a line sheet.
 */
package org.adumbrate.sheetfile.reading;
