package org.adumbrate.drawing;

import java.io.IOException;
import java.util.List;
import java.util.function.Supplier;
import org.adumbrate.geometry.Canvas;
import org.adumbrate.raster.LightSink;

/**
 * The drawing as pixels, at print resolution or for the screen: takes the strips of the underlay, draws the layers over
 * them as the PDF has them, and hands them on, such as to the encoder of a picture. Nothing of the size of the sheet is held, and
 * any division into strips gives the same pixels. What lies half over something else is mixed as it is encoded, not as
 * light: so do the programs that show PDF and SVG.
 */
public final class FlatDrawing implements LightSink {
    /** The rows of a strip with which no row of layers is drawn twice. */
    public static final int STRIP_ROWS = TileGrid.ROWS;

    private final Canvas canvas;
    private final int underlayChannels;
    private final int channels;
    private final LightSink picture;
    private final Supplier<InkSource> ink;

    /**
     * @param canvas what is drawn on
     * @param underlayChannels channels of the strips that will come: 1 or 3
     * @param layers what is drawn over them; those that are not shown are left out
     * @param channels the picture's; where it is grey, colours have their luminance
     * @param picture takes the strips with the layers on them; finishing it is left to whoever began it
     */
    public FlatDrawing(Canvas canvas, int underlayChannels, List<Layer> layers, int channels, LightSink picture) {
        this.canvas = canvas;
        this.underlayChannels = underlayChannels;
        this.channels = channels;
        this.picture = picture;
        Inks inks = new Inks(canvas, layers, channels == 1);
        this.ink = () -> new StreamedInk(inks);
    }

    /**
     * Lays layers that are held over what comes.
     *
     * @param underlayChannels channels of the strips that will come: 1 or 3
     * @param layers what is laid over them
     * @param picture takes the strips with the layers on them, with the layers' channels
     */
    public FlatDrawing(int underlayChannels, InkedLayers layers, LightSink picture) {
        this.canvas = layers.canvas();
        this.underlayChannels = underlayChannels;
        this.channels = layers.channels();
        this.picture = picture;
        this.ink = () -> (column, row) -> {
            InkTile tile = layers.tile(column, row);
            return tile == null ? null : tile.pixels();
        };
    }

    /** The channels that show an underlay of so many and layers over it truly: 1 if all are grey, else 3. */
    public static int channels(int underlayChannels, List<Layer> layers) {
        boolean grey = layers.stream()
                .filter(Layer::shown)
                .flatMap(layer -> layer.marks().stream())
                .filter(Paint::leavesTrace)
                .map(Paint::colorOf)
                .allMatch(color -> color.equals(Inks.grey(color)));
        return grey ? underlayChannels : 3;
    }

    @Override
    public Filler filler() {
        return new InkOver(canvas.window(), underlayChannels, channels, ink.get(), picture.filler());
    }

    @Override
    public void take(Strip strip) throws IOException {
        picture.take(strip);
    }

    @Override
    public boolean wantsEvenStrips() {
        return picture.wantsEvenStrips();
    }
}
