/** Sets of files that many programs made of one sheet's lines, read and compared with what they should hold. */
package org.adumbrate.producers;
