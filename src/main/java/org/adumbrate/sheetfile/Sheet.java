package org.adumbrate.sheetfile;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.geometry.SheetSize;

/**
 * Everything that a sheet file asks for. Maps keep the order of the file.
 *
 * @param size the printed size; that of the lines' page where left out
 * @param resolution of the underlay
 * @param lines the line sheets, at least one
 * @param passes the rasters that lie under the lines
 * @param floors the elevation of each floor by its name
 * @param camera what is known of the camera
 * @param sun where the sun stands
 * @param heights the reference lines of known height
 * @param pens the pens by name
 * @param cut how the cut is drawn
 * @param veils the translucent fills by name
 * @param figures the figures that stand on the floors
 * @param deliver the files to make
 */
public record Sheet(
        @Key("The printed size, such as 17 x 11 in or A3 landscape; that of the lines' page where left out.")
        Optional<SheetSize> size,

        @Key(value = "Pixels per inch of the underlay.", byDefault = "300", min = 36, max = 2400)
        Resolution resolution,

        @Key(value = "The line sheets: one vector file (PDF or SVG) or a list of them.", atLeast = 1, oneOrMany = true)
        List<LineFile> lines,

        @Key(value = "The rasters that lie under the lines.", byDefault = "{}")
        Passes passes,

        @Key(value = "The floors by name: the elevation of each.", min = -10_000, max = 10_000)
        Map<String, Metres> floors,

        @Key("The camera; what is missing is fitted from the height lines.")
        Optional<Camera> camera,

        @Key("The sun: by azimuth and altitude, by place and time, or by one shadow on the drawing.")
        Optional<Sun> sun,

        @Key("The reference lines of known height that stand on the floors.")
        Optional<Heights> heights,

        @Key("The pens by name, each for one stroke colour of the line sheets; drawn in this order.")
        Map<String, Pen> pens,

        @Key("How the cut is drawn.") Optional<Cut> cut,

        @Key("The translucent fills by name, such as foliage and glass.")
        Map<String, Veil> veils,

        @Key("The figures that stand on the floors.") List<Figure> figures,

        @Key("The files to make, by kind.") Deliver deliver) {}
