/**
 * Pictures of an open sheet for a page: of what a page composes them, and what it has to fetch for it. How a sheet is drawn is decided
 * in {@code prepare}.
 */
package org.adumbrate.proof.picture;
