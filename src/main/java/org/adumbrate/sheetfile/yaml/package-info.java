/**
 * From the bytes of a sheet file to YAML nodes, with limits; what is no text or no YAML is refused here, in plain words.
 * No key of the sheet file is known here.
 */
package org.adumbrate.sheetfile.yaml;
