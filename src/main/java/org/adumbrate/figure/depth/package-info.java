/**
 * How far away what is seen at each place of the sheet lies: depth passes in metres, with where they lie on the sheet. What is
 * done with depths, hiding or shading, is not known here.
 */
package org.adumbrate.figure.depth;
