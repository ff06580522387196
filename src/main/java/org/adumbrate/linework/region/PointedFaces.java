package org.adumbrate.linework.region;

import java.util.List;
import org.adumbrate.geometry.Region;
import org.adumbrate.geometry.SheetPoint;

/**
 * The faces that some points name.
 *
 * @param region what they cover between them; lines between two of them go
 * @param spots what each point lies in, in the order of the points
 */
public record PointedFaces(Region<SheetPoint> region, List<Spot> spots) {
    /** A point's face where the point lies off the sheet. */
    public static final int NONE = -1;

    /** Copies the list. */
    public PointedFaces {
        spots = List.copyOf(spots);
    }

    /**
     * What a point lies in.
     *
     * @param face the face's number, or {@link #NONE}
     * @param onLine true if a line that bounds faces runs through the point, within two grid steps
     * @param areaMm2 how much the face covers, without what stands in it
     * @param edgeMm along what length the sheet's edge bounds the face, and no line
     */
    public record Spot(int face, boolean onLine, double areaMm2, double edgeMm) {}
}
