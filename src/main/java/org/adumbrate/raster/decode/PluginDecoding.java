package org.adumbrate.raster.decode;

import java.awt.image.Raster;
import java.io.EOFException;
import java.io.IOException;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.SampleSink;

/** One decoding by a library's reader, into a picture that has no memory. */
final class PluginDecoding implements SinkRaster.PieceSink {
    private final SourceFile file;
    private final Plugin plugin;
    private final PixelSize size;
    private final GuardedSink sink;
    private final PieceSamples samples;
    private int rows;

    PluginDecoding(SourceFile file, Plugin plugin, PluginPixels pixels, PixelSize size, SampleSink sink) {
        this.file = file;
        this.plugin = plugin;
        this.size = size;
        this.sink = new GuardedSink(sink);
        this.samples = pixels.samples().get();
    }

    void run() throws IOException {
        ImageReader reader = plugin.reader();
        try (SplicedInput input = new SplicedInput(file)) {
            reader.setInput(input, true, true);
            read(reader);
        } catch (EOFException e) {
            throw file.endsEarly("after " + rows + " of " + size.height() + " rows");
        } catch (IOException | RuntimeException e) {
            sink.rethrow();
            throw file.damaged("its data cannot be unpacked after " + rows + " of " + size.height() + " rows", e);
        } finally {
            reader.dispose();
        }
    }

    private void read(ImageReader reader) throws IOException {
        ImageTypeSpecifier type = PluginReader.type(reader);
        ImageReadParam parameters = reader.getDefaultReadParam();
        parameters.setDestination(
                SinkImage.of(type.getColorModel(), type.getSampleModel(size.width(), size.height()), this));
        reader.read(0, parameters);
    }

    @Override
    public void take(int x, int y, Raster piece, int band) {
        rows += piece.getHeight();
        samples.put(piece, x, y, sink);
    }
}
