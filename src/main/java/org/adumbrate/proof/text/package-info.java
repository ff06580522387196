/**
 * The text of a sheet while a page is open on it: what stands in the file, how it is changed, and what others write. It knows
 * neither pictures nor the network.
 */
package org.adumbrate.proof.text;
