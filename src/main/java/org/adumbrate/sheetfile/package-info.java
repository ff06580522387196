/**
 * The sheet file: what was asked, read strictly and checked, with file, line and column for every complaint.
 * Nothing here opens a pass or a line sheet, and nobody but build and cli looks in.
 *
 * <p>The public records are the grammar: {@link org.adumbrate.sheetfile.Sheet} at the top, a component for each key, an
 * interface sealed over records where a thing can be said in several ways. What a key means, its range and its default
 * stand in its annotation. From these a tree of forms is made once, and the same tree reads a text and tells the JSON
 * Schema; a new key is a new component, and nothing else. What values owe each other is checked afterwards, on whatever
 * could be read, so that one run finds everything.
 */
package org.adumbrate.sheetfile;
