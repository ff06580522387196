package org.adumbrate.linework;

import org.adumbrate.geometry.Dash;
import org.adumbrate.geometry.LineCap;
import org.adumbrate.geometry.LineJoin;
import org.adumbrate.geometry.Srgb;

/** How a stroke looks, in mm of the page. */
record StrokeStyle(Srgb color, double widthMm, Dash dash, LineCap cap, LineJoin join) {}
