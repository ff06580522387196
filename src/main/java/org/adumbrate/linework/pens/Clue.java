package org.adumbrate.linework.pens;

/** A role and why. */
record Clue(LineRole role, String reason) {}
