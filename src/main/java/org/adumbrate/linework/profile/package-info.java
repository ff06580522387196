/**
 * The weight of lines by where they lie in the view: the outline of the building against what lies far behind it, and lines
 * that become lighter with their distance. Lines stay the vectors they are; what they are drawn with is not known here.
 */
package org.adumbrate.linework.profile;
