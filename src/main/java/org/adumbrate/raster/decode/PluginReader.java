package org.adumbrate.raster.decode;

import java.io.IOException;
import java.util.List;
import javax.imageio.ImageReader;
import javax.imageio.ImageTypeSpecifier;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PixelSize;
import org.adumbrate.raster.Orientation;
import org.adumbrate.raster.RasterInfo;
import org.adumbrate.raster.RasterReader;
import org.adumbrate.raster.SampleSink;

/** Reads BMP, PNM, PAM and Radiance HDR. */
final class PluginReader implements RasterReader {
    private final SourceFile file;
    private final Plugin plugin;
    private final PluginPixels pixels;
    private final RasterInfo info;

    private PluginReader(SourceFile file, Plugin plugin, PluginPixels pixels, RasterInfo info) {
        this.file = file;
        this.plugin = plugin;
        this.pixels = pixels;
        this.info = info;
    }

    static PluginReader open(SourceFile file, Plugin plugin) throws IOException {
        PluginHead head = plugin.head(file);
        PluginPixels pixels = pixels(file, plugin, head.size());
        RasterInfo info = new RasterInfo(
                file.path(),
                plugin.name(),
                head.size(),
                Orientation.TOP_LEFT,
                pixels.layout().type(),
                pixels.layout().decoder(Colorimetry.untagged(pixels.layout().colour())),
                head.dpi(),
                plugin.inOrder(),
                List.of());
        return new PluginReader(file, plugin, pixels, info);
    }

    private static PluginPixels pixels(SourceFile file, Plugin plugin, PixelSize size) throws IOException {
        ImageReader reader = plugin.reader();
        try (SplicedInput input = new SplicedInput(file)) {
            reader.setInput(input, true, true);
            if (reader.getWidth(0) != size.width() || reader.getHeight(0) != size.height()) {
                throw file.damaged("its head can be read in two ways");
            }
            return PluginPixels.of(type(reader).getColorModel());
        } catch (InputFault e) {
            throw e;
        } catch (IOException | RuntimeException e) {
            throw file.damaged("its head cannot be read as " + plugin, e);
        } finally {
            reader.dispose();
        }
    }

    /** What the reader itself would read into. */
    static ImageTypeSpecifier type(ImageReader reader) throws IOException {
        ImageTypeSpecifier raw = reader.getRawImageType(0);
        return raw == null ? reader.getImageTypes(0).next() : raw;
    }

    @Override
    public RasterInfo info() {
        return info;
    }

    @Override
    public void decode(SampleSink sink) throws IOException {
        new PluginDecoding(file, plugin, pixels, info.stored(), sink).run();
    }

    @Override
    public void close() {
        // Nothing is kept open between decodings.
    }
}
