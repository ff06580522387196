package org.adumbrate.prepare.scene;

import java.util.List;
import org.adumbrate.figure.outline.FigureOutline;

/**
 * An outline.
 *
 * @param content by what it is known: its name in the program, or its file and that file's content
 * @param shape the outline itself
 */
record KnownOutline(List<Object> content, FigureOutline shape) {}
