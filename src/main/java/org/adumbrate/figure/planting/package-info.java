/**
 * Plants scattered over a floor and birds over a sky: the same seed always gives the same scatter, on every machine. What plants
 * and birds look like is told from outside.
 */
package org.adumbrate.figure.planting;
