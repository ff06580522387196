/**
 * Where things lie on an open sheet: what a page may point at, what is drawn at a place, to what a hand's point snaps, and how large a
 * person is where it might stand. Nothing is changed here.
 */
package org.adumbrate.proof.scene;
