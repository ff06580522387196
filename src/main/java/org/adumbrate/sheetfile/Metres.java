package org.adumbrate.sheetfile;

/**
 * A length in the model.
 *
 * @param m in metres
 */
public record Metres(double m) {}
