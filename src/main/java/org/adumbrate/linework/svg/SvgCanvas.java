package org.adumbrate.linework.svg;

import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.w3c.dom.Element;

/** What an SVG is drawn on: told of every visible shape in drawing order, and of what is no shape. */
interface SvgCanvas {
    /**
     * A shape.
     *
     * @param outline its outline, through the scene's map
     * @param scene the style and the clip that it is drawn with
     * @throws InputFault if there is too much of it
     */
    void shape(VectorPath<PagePoint> outline, SvgScene scene) throws InputFault;

    /** A text, an image or something else that has no outline, and that is visible. */
    void mark(Element element, SvgScene scene);

    /** Something that the file asks for, and that is not followed or not taken. */
    void told(LeftOut.Kind kind);

    /** How many strokes have been painted. */
    int painted();
}
