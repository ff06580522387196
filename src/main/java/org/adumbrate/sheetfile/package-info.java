/**
 * The grammar of the sheet file: a record for each thing that can be asked for, {@link org.adumbrate.sheetfile.Sheet} at the
 * top. What a key means, its range and its default stand in its annotation; how it is read, told and edited lies in the rooms
 * within, and nothing here opens a file.
 *
 * <p>A component is a key, an interface sealed over records a thing that can be said in several ways. From the records a tree
 * of forms is made once ({@code form}), and the same tree reads a text ({@code reading}), tells the JSON Schema and the list of
 * keys ({@code schema}), and knows what may be edited; a new key is a new component, and nothing else.
 */
package org.adumbrate.sheetfile;
