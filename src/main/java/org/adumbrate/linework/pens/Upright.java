package org.adumbrate.linework.pens;

/** A straight stroke that stands upright: where its foot is, and how high it reaches, in mm of the page. */
record Upright(double footY, double height) {}
