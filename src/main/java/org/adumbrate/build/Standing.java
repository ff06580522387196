package org.adumbrate.build;

import java.util.List;
import org.adumbrate.figure.PlacedFigure;
import org.adumbrate.sheetfile.Look;

/**
 * A figure or a plant of a sheet.
 *
 * @param layer the layer that it is drawn on
 * @param floor the floor that it stands on
 * @param figure where it stands and how
 * @param behind the named regions that hide it
 * @param look how it is drawn
 */
record Standing(String layer, String floor, PlacedFigure figure, List<String> behind, Look look) {}
