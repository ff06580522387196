package org.adumbrate.linework.pdf;

import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.adumbrate.fault.InputFault;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.ReadingNote;
import org.adumbrate.linework.clip.TooIntricateException;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;

/**
 * The annotations of a page (ISO 32000-1, 12.5). Lines, ink and figures that somebody drew on it are taken as lines, as far as they
 * show on a screen; others are counted.
 */
final class PdfNotes {
    private static final Set<String> DRAWN = Set.of("Line", "Ink", "PolyLine", "Polygon", "Square", "Circle");

    /** What marks no paper, or opens elsewhere. */
    private static final Set<String> UNSEEN = Set.of("Popup", "Link");

    private static final int MOST_NOTES = 100_000;
    private static final int HIDDEN = 1 << 1;
    private static final int PRINT = 1 << 2;
    private static final int NO_VIEW = 1 << 5;
    private static final COSName CAPTION = COSName.getPDFName("Cap");

    private final PDDocument document;
    private final PdfInterpreter interpreter;
    private final PdfScene scene;
    private final PdfMarks found;
    private final Map<String, Integer> taken = new TreeMap<>();
    private int strokes;
    private int unprinted;

    PdfNotes(PDDocument document, PdfInterpreter interpreter, PdfScene scene, PdfMarks found) {
        this.document = document;
        this.interpreter = interpreter;
        this.scene = scene;
        this.found = found;
    }

    /**
     * Draws the notes of a page.
     *
     * @throws IOException if the content of one is damaged
     */
    void draw(COSDictionary page) throws IOException {
        COSArray notes = page.getCOSArray(COSName.ANNOTS);
        if (notes == null) {
            return;
        }
        if (notes.size() > MOST_NOTES) {
            throw new TooIntricateException("has more than " + MOST_NOTES + " annotations");
        }
        for (int k = 0; k < notes.size(); k++) {
            if (notes.getObject(k) instanceof COSDictionary note && shows(note)) {
                int depth = scene.layers().depth();
                COSDictionary layer = note.getCOSDictionary(COSName.OC);
                if (layer != null) {
                    scene.layers().open(layer);
                }
                if (!scene.layers().hidden()) {
                    draw(note, note.getNameAsString(COSName.SUBTYPE, ""));
                }
                scene.layers().closeTo(depth);
            }
        }
    }

    private static boolean shows(COSDictionary note) {
        return (note.getInt(COSName.F, 0) & (HIDDEN | NO_VIEW)) == 0
                && !UNSEEN.contains(note.getNameAsString(COSName.SUBTYPE, ""));
    }

    private void draw(COSDictionary note, String kind) throws IOException {
        if (!DRAWN.contains(kind)) {
            if (appearance(note).isPresent()) {
                found.leftOut(LeftOut.Kind.ANNOTATION);
            }
            return;
        }
        try {
            Optional<COSStream> look = appearance(note).or(() -> constructed(note));
            if (look.isPresent()) {
                int before = found.strokes();
                interpreter.runForm(look.get(), placing(look.get(), note));
                count(note, kind, found.strokes() - before);
            }
        } catch (InputFault | DamagedContentException | TooIntricateException e) {
            throw e;
        } catch (IOException | RuntimeException e) {
            found.leftOut(LeftOut.Kind.ANNOTATION);
        }
    }

    private void count(COSDictionary note, String kind, int drawn) {
        if (drawn > 0) {
            taken.merge(kind, 1, Integer::sum);
            strokes += drawn;
            unprinted += (note.getInt(COSName.F, 0) & PRINT) == 0 ? 1 : 0;
        }
    }

    /** The stream that shows a note at rest (12.5.5): one of several, if it has states. */
    private static Optional<COSStream> appearance(COSDictionary note) {
        COSDictionary looks = note.getCOSDictionary(COSName.AP);
        COSBase normal = looks == null ? null : looks.getDictionaryObject(COSName.N);
        if (normal instanceof COSDictionary states && !(normal instanceof COSStream)) {
            COSName state = note.getCOSName(COSName.AS);
            normal = state == null ? null : states.getDictionaryObject(state);
        }
        return normal instanceof COSStream stream ? Optional.of(stream) : Optional.empty();
    }

    /** What the library draws for a note that brings no picture of itself, without the words on it. */
    private Optional<COSStream> constructed(COSDictionary note) {
        note.removeItem(CAPTION);
        try {
            PDAnnotation.createAnnotation(note).constructAppearances(document);
        } catch (IOException e) {
            throw new IllegalArgumentException(e);
        }
        return appearance(note);
    }

    /** The box of the picture, as its matrix turns it, fitted into the note's rectangle (12.5.5, algorithm 8.1). */
    private static AffineTransform placing(COSStream look, COSDictionary note) {
        double[] box = PdfShadings.numbers(look, COSName.BBOX);
        double[] rect = PdfShadings.numbers(note, COSName.RECT);
        if (box.length != 4 || rect.length != 4) {
            throw new IllegalArgumentException("a note has no place");
        }
        Rectangle2D turned =
                PdfShadings.matrix(look).createTransformedShape(rectangle(box)).getBounds2D();
        Rectangle2D place = rectangle(rect);
        AffineTransform placing = AffineTransform.getTranslateInstance(place.getX(), place.getY());
        if (turned.getWidth() > 0 && turned.getHeight() > 0) {
            placing.scale(place.getWidth() / turned.getWidth(), place.getHeight() / turned.getHeight());
        }
        placing.translate(-turned.getX(), -turned.getY());
        return placing;
    }

    private static Rectangle2D rectangle(double[] corners) {
        Rectangle2D rectangle = new Rectangle2D.Double();
        rectangle.setFrameFromDiagonal(corners[0], corners[1], corners[2], corners[3]);
        return rectangle;
    }

    /** What there is to say of those that were taken. */
    Optional<ReadingNote> remark() {
        if (taken.isEmpty()) {
            return Optional.empty();
        }
        String kinds = taken.entrySet().stream()
                .map(kind -> kind.getValue() + " " + kind.getKey())
                .collect(Collectors.joining(", "));
        String offPaper = unprinted == 0 ? "" : "; " + unprinted + " of them viewers show and do not print";
        return Optional.of(new ReadingNote(
                ReadingNote.Kind.ANNOTATIONS,
                strokes + (strokes == 1 ? " stroke is" : " strokes are") + " taken from annotations (" + kinds + ")"
                        + offPaper));
    }
}
