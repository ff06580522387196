package org.adumbrate.linework.pdf;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.linework.LeftOut;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.cos.COSString;

/** Text (ISO 32000-1, 9.4). It is counted, but for glyphs that are drawn by strokes (9.6.5): these are run. */
final class PdfTextOperators {
    private static final int SPACE = 32;

    private final PdfContext context;
    private final PdfColors colors;
    private final PdfMarks found;
    private final PdfForms contents;
    private final PdfInPlace inPlace;
    private final IdentityHashMap<COSDictionary, Optional<PdfStrokeFont>> fonts = new IdentityHashMap<>();
    private AffineTransform matrix = new AffineTransform();
    private AffineTransform lineMatrix = new AffineTransform();

    PdfTextOperators(PdfContext context, PdfColors colors, PdfMarks found, PdfForms contents, PdfInPlace inPlace) {
        this.context = context;
        this.colors = colors;
        this.found = found;
        this.contents = contents;
        this.inPlace = inPlace;
    }

    void addTo(Map<String, PdfOperator> operators) {
        operators.put("BT", operands -> place(new AffineTransform()));
        operators.put("ET", operands -> {});
        operators.put("Tm", operands -> place(new AffineTransform(operands.numbers(6))));
        operators.put("Td", operands -> move(operands.numbers(2)));
        operators.put("TD", operands -> {
            double[] shift = operands.numbers(2);
            set(text().withLeading(-shift[1]));
            move(shift);
        });
        operators.put("T*", operands -> nextLine());
        operators.put("Tj", operands -> show(operands.last()));
        operators.put("TJ", operands -> show(operands.last()));
        operators.put("'", operands -> {
            nextLine();
            show(operands.last());
        });
        operators.put("\"", operands -> {
            if (operands.values().size() == 3) {
                double[] spaces = new PdfOperands(operands.values().subList(0, 2)).numbers(2);
                set(text().withWordSpace(spaces[0]).withCharSpace(spaces[1]));
            }
            nextLine();
            show(operands.last());
        });
        addState(operators);
    }

    private void addState(Map<String, PdfOperator> operators) {
        operators.put("Tf", operands -> {
            COSName name = operands.get(0, COSName.class);
            set(text().withFont(context.resource(COSName.FONT, name), operands.number()));
        });
        operators.put("Tc", operands -> set(text().withCharSpace(operands.number())));
        operators.put("Tw", operands -> set(text().withWordSpace(operands.number())));
        operators.put("Tz", operands -> set(text().withStretch(operands.number() / 100)));
        operators.put("TL", operands -> set(text().withLeading(operands.number())));
        operators.put("Ts", operands -> set(text().withRise(operands.number())));
        operators.put("Tr", operands -> set(text().withMode((int) operands.number())));
    }

    private PdfTextState text() {
        return context.state().text;
    }

    private void set(PdfTextState text) {
        context.state().text = text;
    }

    private void place(AffineTransform at) {
        lineMatrix = at;
        matrix = new AffineTransform(at);
    }

    private void move(double... shift) {
        AffineTransform next = new AffineTransform(lineMatrix);
        next.translate(shift[0], shift[1]);
        place(next);
    }

    private void nextLine() {
        move(0, -text().leading());
    }

    /** Shows a string, or strings with shifts between them. */
    private void show(COSBase shown) throws IOException {
        if (context.layers().hidden() || context.state().unseen) {
            return;
        }
        Optional<PdfStrokeFont> font = text().font().flatMap(this::strokeFont);
        if (font.isEmpty()) {
            if (!text().isInvisible()) {
                found.leftOut(LeftOut.Kind.TEXT);
            }
            return;
        }
        boolean others = false;
        if (shown instanceof COSString string) {
            others = show(string, font.get());
        } else if (shown instanceof COSArray strings) {
            for (COSBase each : strings) {
                if (each instanceof COSString string) {
                    others |= show(string, font.get());
                } else if (each instanceof COSNumber shift) {
                    matrix.translate(-shift.floatValue() / 1000 * text().size() * text().stretch(), 0);
                }
            }
        }
        if (others) {
            found.leftOut(LeftOut.Kind.TEXT);
        }
    }

    private Optional<PdfStrokeFont> strokeFont(COSDictionary font) {
        return fonts.computeIfAbsent(font, known -> PdfStrokeFont.of(known, contents));
    }

    /** Whether glyphs were met that are not drawn by strokes. */
    private boolean show(COSString string, PdfStrokeFont font) throws IOException {
        boolean others = false;
        for (byte each : string.getBytes()) {
            int code = each & 0xff;
            Optional<PdfStrokeFont.Glyph> glyph = font.glyph(code);
            if (glyph.isPresent() && glyph.get().isStroked()) {
                draw(glyph.get(), font);
            } else {
                others |= glyph.isPresent() && !glyph.get().isEmpty();
            }
            PdfTextState text = text();
            double space = text.charSpace() + (code == SPACE ? text.wordSpace() : 0);
            matrix.translate((font.advance(code) * text.size() + space) * text.stretch(), 0);
        }
        return others;
    }

    private void draw(PdfStrokeFont.Glyph glyph, PdfStrokeFont font) throws IOException {
        PdfTextState text = text();
        inPlace.run(glyph.content(), font.resources(), state -> {
            state.toPage.concatenate(matrix);
            state.toPage.concatenate(
                    new AffineTransform(text.size() * text.stretch(), 0, 0, text.size(), 0, text.rise()));
            state.toPage.concatenate(font.matrix());
            state.enterForm();
            if (glyph.isUncolored()) {
                state.strokeColor = colors.of(state.fill);
                state.strokeAlpha = state.fillAlpha;
                state.uncolored = true;
            }
        });
    }
}
