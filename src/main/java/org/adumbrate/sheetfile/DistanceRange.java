package org.adumbrate.sheetfile;

import org.adumbrate.sheetfile.complaint.Wording;

/**
 * From how far to how far along the viewing direction.
 *
 * @param nearest the least distance from the eye
 * @param farthest the greatest; not less than the nearest
 */
@Written(asList = true)
public record DistanceRange(
        @Key(value = "The least distance from the eye.", min = 0.1, max = 1e5)
        Metres nearest,

        @Key(value = "The greatest distance from the eye.", min = 0.1, max = 1e5)
        Metres farthest) {
    /** @throws IllegalArgumentException if the nearest lies beyond the farthest */
    public DistanceRange {
        if (nearest.m() > farthest.m()) {
            throw new IllegalArgumentException("the nearest, %s m, must not be more than the farthest, %s m"
                    .formatted(Wording.number(nearest.m()), Wording.number(farthest.m())));
        }
    }
}
