/**
 * The grammar told to others: as a JSON Schema for editors, as a list of keys for people.
 * Nothing here reads a sheet file.
 */
package org.adumbrate.sheetfile.schema;
