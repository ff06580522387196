package org.adumbrate.linework.svg.css;

/**
 * A property and what it is set to.
 *
 * @param property its name, in lower case unless it is a custom property
 * @param value as it is written, or spelled otherwise to the same effect
 * @param important whether it outdoes those that are not (CSS Cascade 4, 6.3)
 */
public record CssDeclaration(String property, String value, boolean important) {}
