package org.adumbrate.linework.pdf;

import java.awt.geom.AffineTransform;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.clip.TooIntricateException;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDResources;

/** Where the reading of a page stands: the stack of graphics states, the resources at hand, the open layers. */
final class PdfContext {
    private static final int MOST_STATES = 100_000;

    private final Deque<PdfGraphicsState> states = new ArrayDeque<>();
    private final PdfVisibility layers;
    private PDResources resources = new PDResources();

    PdfContext(AffineTransform toPage, Clip<PagePoint> clip, PdfVisibility layers) {
        this.layers = layers;
        states.push(new PdfGraphicsState(toPage, clip));
    }

    PdfGraphicsState state() {
        return states.element();
    }

    PdfVisibility layers() {
        return layers;
    }

    PDResources resources() {
        return resources;
    }

    void useResources(PDResources others) {
        resources = others;
    }

    /** The dictionary that the resources hold under a name, if they do. */
    Optional<COSDictionary> resource(COSName category, COSName name) {
        COSDictionary entries = resources.getCOSObject().getCOSDictionary(category);
        return entries == null ? Optional.empty() : Optional.ofNullable(entries.getCOSDictionary(name));
    }

    /** How many states are saved. */
    int depth() {
        return states.size();
    }

    void save() {
        if (states.size() > MOST_STATES) {
            throw new TooIntricateException("saves its graphics state more than " + MOST_STATES + " times over");
        }
        states.push(new PdfGraphicsState(state()));
    }

    /** Goes back until no more than this many states are left, the outermost one always staying. */
    void restoreTo(int depth) {
        while (states.size() > Math.max(1, depth)) {
            states.pop();
        }
    }
}
