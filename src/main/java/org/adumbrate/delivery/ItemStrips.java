package org.adumbrate.delivery;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.prepare.memory.Part;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.raster.LightSink;
import org.adumbrate.raster.encode.PictureFormat;
import org.adumbrate.raster.encode.StripEncoder.Packed;

/** Sorts items into those whose strips are kept, which are filled at once, and those that are still to be blended. */
final class ItemStrips {
    /** Strips of a picture. */
    private record Strips(List<Packed> packed) {}

    private final List<Object> underlay;
    private final Run run;
    private final List<LightSink> wanting = new ArrayList<>();
    private final Map<List<Object>, KeptStrips> keeping = new LinkedHashMap<>();

    /** @param underlay by what the underlay is known */
    ItemStrips(List<Object> underlay, Run run) {
        this.underlay = underlay;
        this.run = run;
    }

    /**
     * Adds an item that shows the underlay alone.
     *
     * @param kind how its strips are packed
     * @param rows of a strip
     */
    void add(String kind, PictureFormat format, int rows, LightSink sink) throws IOException {
        if (!KeptStrips.keeps(format)) {
            wanting.add(sink);
            return;
        }
        List<Object> as = List.of(underlay, kind, format, rows);
        Optional<Strips> kept = run.find(Part.UNDERLAY, Strips.class, as);
        if (kept.isPresent()) {
            for (Packed strip : kept.get().packed()) {
                sink.take(strip);
            }
            return;
        }
        KeptStrips keeper = new KeptStrips(sink);
        keeping.put(as, keeper);
        wanting.add(keeper);
    }

    /** Adds an item that shows more than the underlay. */
    void add(LightSink sink) {
        wanting.add(sink);
    }

    /** Those that are still to be blended. */
    List<LightSink> wanting() {
        return wanting;
    }

    /** Keeps what was blended. */
    void keep() {
        keeping.forEach((as, keeper) -> run.keep(Part.UNDERLAY, Strips.class, as, new Strips(keeper.strips())));
    }
}
