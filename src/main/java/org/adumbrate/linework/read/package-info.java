/**
 * Line sheets of any kind that is known: tells by its content what a file is and gives it to the reader of that format. Formats
 * themselves are read next door, and what becomes of the lines is not known here.
 */
package org.adumbrate.linework.read;
