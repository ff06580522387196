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
 * @param floors the floors by name
 * @param regions parts of the sheet by name, for others to refer to
 * @param camera what is known of the camera
 * @param sun where the sun stands
 * @param heights the reference lines of known height
 * @param pens the pens by name
 * @param cleanUp what is tidied in the lines before they are drawn
 * @param cut how the cut is drawn
 * @param profile the heavier line around the building
 * @param veils the translucent fills by name
 * @param entourage the look of figures, planting and birds
 * @param figures the figures that stand on the floors
 * @param planting the planting by name
 * @param birds the flocks by name
 * @param order names of layers from the lowest up; these change places until they lie so, and all others stay
 * @param deliver the files to make
 */
public record Sheet(
        @Key("The printed size, such as 17 x 11 in or A3 landscape; that of the lines' page where left out.")
        Optional<SheetSize> size,

        @Key(value = "Pixels per inch of the underlay.", byDefault = "300", min = 36, max = 2400)
        PrintResolution resolution,

        @Key(value = "The line sheets: one vector file (PDF or SVG) or a list of them.", atLeast = 1, oneOrMany = true)
        List<LineFile> lines,

        @Key(value = "The rasters that lie under the lines.", byDefault = "{}")
        Passes passes,

        @Key("The floors by name: the elevation of each, or its elevation and where it is seen.")
        Map<String, Floor> floors,

        @Key(
                "Parts of the sheet by name, for others to refer to: polygons in mm, faces between lines by a point in each, or a colour"
                        + " of a raster.")
        Map<String, SheetRegion> regions,

        @Key("The camera; what is missing is fitted from the height lines.")
        Optional<Camera> camera,

        @Key("The sun: by azimuth and altitude, by place and time, or by shadows on the drawing.")
        Optional<Sun> sun,

        @Key("The reference lines of known height that stand on the floors.")
        Optional<Heights> heights,

        @Key("The pens by name, each for one stroke colour of the line sheets; drawn in this order.")
        Map<String, PenStyle> pens,

        @Key(value = "What is tidied in the lines before they are drawn; false for nothing.", byDefault = "{}")
        CleanUpLimits cleanUp,

        @Key("How the cut is drawn.") Optional<Cut> cut,

        @Key("The heavier line around the building: its width, or its options.")
        Optional<Profile> profile,

        @Key("The translucent fills by name, such as foliage and glass.")
        Map<String, Veil> veils,

        @Key(value = "The look of figures, planting and birds, unless one of them says otherwise.", byDefault = "{}")
        Look entourage,

        @Key("The figures that stand on the floors.") List<Figure> figures,

        @Key("The planting by name: plants scattered over regions.")
        Map<String, Planting> planting,

        @Key("The birds by name: flocks in the sky.") Map<String, Birds> birds,

        @Key("Names of layers from the lowest up: these change places until they lie so, and all others stay.")
        List<String> order,

        @Key("The files to make, by kind.") Deliver deliver) {}
