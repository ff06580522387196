/**
 * JSON (RFC 8259), written and read: plain maps, lists, texts, numbers and truth values on one side, text on the other. What they
 * mean is not known here.
 */
package org.adumbrate.json;
