package org.adumbrate.linework.pdf;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSStream;

/** A font whose glyphs are content streams (Type 3, ISO 32000-1, 9.6.5), some of which draw strokes. */
final class PdfStrokeFont {
    private static final COSName CHAR_PROCS = COSName.getPDFName("CharProcs");
    private static final COSName FONT_MATRIX = COSName.getPDFName("FontMatrix");
    private static final int CODES = 256;

    private final COSDictionary font;
    private final AffineTransform matrix;
    private final Map<Integer, Glyph> glyphs = new HashMap<>();

    /**
     * A glyph.
     *
     * @param content the stream that draws it
     * @param isStroked whether it draws strokes, or forms, which may
     * @param isUncolored whether it is painted in the colour of the text (d1)
     * @param isEmpty whether it draws nothing
     */
    record Glyph(COSStream content, boolean isStroked, boolean isUncolored, boolean isEmpty) {}

    private PdfStrokeFont(COSDictionary font) {
        this.font = font;
        double[] m = PdfShadings.numbers(font, FONT_MATRIX, 0.001, 0, 0, 0.001, 0, 0);
        this.matrix = m.length == 6 ? new AffineTransform(m) : AffineTransform.getScaleInstance(0.001, 0.001);
    }

    /** A font as the dictionary states it; nothing if it is of another type, or none of its glyphs draws strokes. */
    static Optional<PdfStrokeFont> of(COSDictionary font, PdfForms contents) {
        COSDictionary procedures = font.getCOSDictionary(CHAR_PROCS);
        if (!COSName.getPDFName("Type3").equals(font.getCOSName(COSName.SUBTYPE)) || procedures == null) {
            return Optional.empty();
        }
        PdfStrokeFont read = new PdfStrokeFont(font);
        read.names().forEach((code, name) -> {
            if (procedures.getDictionaryObject(name) instanceof COSStream content) {
                glyph(content, contents).ifPresent(glyph -> read.glyphs.put(code, glyph));
            }
        });
        return read.glyphs.values().stream().anyMatch(Glyph::isStroked) ? Optional.of(read) : Optional.empty();
    }

    /** A glyph that cannot be read draws nothing that is missed among lines: text is left out in any case. */
    private static Optional<Glyph> glyph(COSStream content, PdfForms contents) {
        try {
            PdfScan scan = PdfScan.of(contents.content(content));
            boolean stroked = scan.strokes() > 0 || !scan.drawn().isEmpty();
            return Optional.of(new Glyph(content, stroked, scan.isUncolored(), !stroked && !scan.isPainting()));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    /** The name of each code, as the font's encoding states them; Type 3 fonts have no other. */
    private Map<Integer, COSName> names() {
        Map<Integer, COSName> names = new HashMap<>();
        COSDictionary encoding = font.getCOSDictionary(COSName.ENCODING);
        COSArray differences = encoding == null ? null : encoding.getCOSArray(COSName.DIFFERENCES);
        int code = 0;
        for (int k = 0; differences != null && k < differences.size(); k++) {
            COSBase each = differences.getObject(k);
            if (each instanceof COSNumber number) {
                code = number.intValue();
            } else if (each instanceof COSName name) {
                if (code >= 0 && code < CODES) {
                    names.put(code, name);
                }
                code++;
            }
        }
        return names;
    }

    /** What a code draws; nothing if it has no glyph. */
    Optional<Glyph> glyph(int code) {
        return Optional.ofNullable(glyphs.get(code));
    }

    /** How far a code moves on, in text space for a size of 1. */
    double advance(int code) {
        COSArray widths = font.getCOSArray(COSName.WIDTHS);
        int index = code - font.getInt(COSName.FIRST_CHAR, 0);
        if (widths == null || index < 0 || index >= widths.size()) {
            return 0;
        }
        return widths.getObject(index) instanceof COSNumber width ? width.floatValue() * matrix.getScaleX() : 0;
    }

    /** Glyph space to text space. */
    AffineTransform matrix() {
        return matrix;
    }

    /** The resources of its glyphs, if it has any of its own. */
    Optional<COSDictionary> resources() {
        return Optional.ofNullable(font.getCOSDictionary(COSName.RESOURCES));
    }
}
