package org.adumbrate.prepare.scene;

import java.util.List;
import org.adumbrate.figure.PlacedFigure;
import org.adumbrate.sheetfile.Look;

/**
 * A figure or a plant of a sheet.
 *
 * @param key the key path that asked for it, such as {@code figures[3]} or {@code planting.bed}
 * @param layer the layer that it is drawn on
 * @param floor the floor that it stands on
 * @param outline by what its outline is known
 * @param figure where it stands and how
 * @param behind the named regions that hide it
 * @param look how it is drawn
 */
public record StandingItem(
        String key,
        String layer,
        String floor,
        List<Object> outline,
        PlacedFigure figure,
        List<String> behind,
        Look look) {}
