package org.adumbrate.linework.clip;

import java.util.List;

/** All that lies in any of several regions; nothing if there are none. */
record Union(List<Region> regions) implements Region {
    @Override
    public Coverage coverage(Bounds box) {
        boolean part = false;
        for (Region region : regions) {
            Coverage coverage = region.coverage(box);
            if (coverage == Coverage.WHOLE) {
                return coverage;
            }
            part |= coverage == Coverage.PART;
        }
        return part ? Coverage.PART : Coverage.NOTHING;
    }

    @Override
    public void crossings(Piece piece, Splits splits) {
        regions.forEach(region -> region.crossings(piece, splits));
    }

    @Override
    public boolean holds(double x, double y) {
        return regions.stream().anyMatch(region -> region.holds(x, y));
    }
}
