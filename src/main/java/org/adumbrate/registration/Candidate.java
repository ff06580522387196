package org.adumbrate.registration;

import org.adumbrate.geometry.Affine;
import org.adumbrate.geometry.RasterPoint;
import org.adumbrate.geometry.SheetPoint;

/**
 * A placement that may be the right one.
 *
 * @param map from the sheet to pixels
 * @param score the larger the better, comparable among candidates of one search only
 */
record Candidate(Affine<SheetPoint, RasterPoint> map, double score) {}
