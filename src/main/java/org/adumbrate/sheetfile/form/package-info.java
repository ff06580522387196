/**
 * How each kind of value is written: the tree of forms that reads nodes, notes values and places, and describes itself.
 * What values owe each other is not checked here.
 */
package org.adumbrate.sheetfile.form;
