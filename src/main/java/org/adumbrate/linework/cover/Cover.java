package org.adumbrate.linework.cover;

import org.adumbrate.linework.clip.VisibleArea;

/**
 * An area that hides what was painted before it, as far back as the group reaches that it is painted in.
 *
 * @param area what it covers
 * @param since the number of the first stroke that it may hide, strokes being numbered from 0 in the order of painting
 * @param until the number of the first stroke that is painted after it
 */
public record Cover(VisibleArea area, int since, int until) {}
