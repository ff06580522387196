package org.adumbrate.linework.clip;

import java.util.List;
import org.adumbrate.geometry.PathPiece;

/** All that lies in any of several apertures; nothing if there are none. */
record Union(List<Aperture> apertures) implements Aperture {
    @Override
    public List<FlatOutline> outlines() {
        return apertures.stream()
                .flatMap(aperture -> aperture.outlines().stream())
                .toList();
    }

    @Override
    public Coverage coverage(Bounds box) {
        boolean part = false;
        for (Aperture aperture : apertures) {
            Coverage coverage = aperture.coverage(box);
            if (coverage == Coverage.WHOLE) {
                return coverage;
            }
            part |= coverage == Coverage.PART;
        }
        return part ? Coverage.PART : Coverage.NOTHING;
    }

    @Override
    public void crossings(PathPiece piece, Splits splits) {
        apertures.forEach(aperture -> aperture.crossings(piece, splits));
    }

    @Override
    public boolean holds(double x, double y) {
        return apertures.stream().anyMatch(aperture -> aperture.holds(x, y));
    }
}
