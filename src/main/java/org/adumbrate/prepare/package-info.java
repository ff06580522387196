/**
 * One sheet made ready: the conductor, which asks every room for its part and puts the parts together. Nothing is computed here, and
 * nothing is written.
 */
package org.adumbrate.prepare;
