/**
 * Changes of a sheet file's text: a key path and a value, spliced in at exact places so that every other byte stays, and where
 * each value stands that may be changed. Nothing here writes a file; a change is a value, and what cannot be done is one too.
 */
package org.adumbrate.sheetfile.edit;
