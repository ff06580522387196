package org.adumbrate.figure.outline;

import java.nio.file.Path;
import java.util.OptionalDouble;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.Extent;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.Region;
import org.adumbrate.linework.svg.SvgArea;

/** Reads outlines that a person has drawn. */
public final class OutlineFiles {
    /** An outline flatter than this share of its width is a line, and no stature could be told by it. */
    private static final double FLATTEST = 1e-3;

    private OutlineFiles() {}

    /**
     * Reads an outline from an SVG: all that it fills, or, where it fills nothing, what its closed strokes enclose. The
     * origin is the foot, x is to the right and y down; where the origin does not lie on the outline's lower edge, the middle
     * of its lowest tenth is the foot.
     *
     * @throws InputFault if the file is missing, is not sound SVG, fills nothing, has no height, or is too intricate
     */
    public static FigureOutline read(Path file) throws InputFault {
        Region<PagePoint> drawn = SvgArea.read(file);
        Extent extent = drawn.extent().orElseThrow();
        if (!(extent.height() > FLATTEST * extent.width())) {
            throw new InputFault(
                    file, "holds a shape without height", "draw the figure upright, its feet at the bottom");
        }
        return FigureOutline.standing(name(file), drawn, OptionalDouble.empty());
    }

    private static String name(Path file) {
        String name = String.valueOf(file.getFileName());
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }
}
