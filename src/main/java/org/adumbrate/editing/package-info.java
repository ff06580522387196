/**
 * A sheet file changed on the disk: written aside and moved into place, and what undoes each change kept beside the outputs.
 * What a change does to the text is decided in {@code sheetfile.edit}; nothing here knows a key.
 */
package org.adumbrate.editing;
