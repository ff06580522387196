package org.adumbrate.linework.pdf;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.linework.page.StrokeStyle;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdmodel.graphics.color.PDColorSpace;
import org.apache.pdfbox.pdmodel.graphics.color.PDPattern;

/** The graphics state and the colours (ISO 32000-1, 8.4 and 8.6.8). */
final class PdfStateOperators {
    private final PdfContext context;
    private final PdfColors colors;
    private final PdfSoftMasks masks;

    PdfStateOperators(PdfContext context, PdfColors colors, PdfSoftMasks masks) {
        this.context = context;
        this.colors = colors;
        this.masks = masks;
    }

    void addTo(Map<String, PdfOperator> operators) {
        operators.put("q", operands -> context.save());
        operators.put("cm", operands -> context.state().toPage.concatenate(new AffineTransform(operands.numbers(6))));
        operators.put("w", operands -> context.state().lineWidth = Math.abs(operands.number()));
        operators.put("J", operands -> context.state().cap = PdfGraphicsState.cap(operands.number()));
        operators.put("j", operands -> context.state().join = PdfGraphicsState.join(operands.number()));
        operators.put("d", operands -> dash(operands.get(0, COSArray.class), operands.number()));
        operators.put("gs", operands -> {
            Optional<COSDictionary> stated = context.resource(COSName.EXT_G_STATE, operands.get(0, COSName.class));
            if (stated.isPresent()) {
                parameters(stated.get());
            }
        });
        addStroking(operators);
        addFilling(operators);
    }

    private void addStroking(Map<String, PdfOperator> operators) {
        put(operators, "CS", operands -> {
            PDColorSpace space = colors.space(operands.get(0, COSName.class), context.resources());
            PdfGraphicsState state = context.state();
            state.strokeSpace = space;
            state.strokeColor = space instanceof PDPattern
                    ? Optional.empty()
                    : Optional.of(colors.srgb(space, space.getInitialColor().getComponents(), context.resources()));
        });
        put(operators, "SC", this::color);
        put(operators, "SCN", this::color);
        put(operators, "G", operands -> deviceColor(COSName.DEVICEGRAY, operands));
        put(operators, "RG", operands -> deviceColor(COSName.DEVICERGB, operands));
        put(operators, "K", operands -> deviceColor(COSName.DEVICECMYK, operands));
    }

    /** An operator that sets a colour, unless what draws the content has settled it (8.7.3.3 and 9.6.5). */
    private void put(Map<String, PdfOperator> operators, String name, PdfOperator operator) {
        operators.put(name, operands -> {
            if (!context.state().uncolored) {
                operator.run(operands);
            }
        });
    }

    private void addFilling(Map<String, PdfOperator> operators) {
        put(
                operators,
                "cs",
                operands ->
                        context.state().fill = PdfFillColor.in(operands.get(0, COSName.class), context.resources()));
        put(operators, "sc", this::fill);
        put(operators, "scn", this::fill);
        put(operators, "g", operands -> fill(COSName.DEVICEGRAY, operands));
        put(operators, "rg", operands -> fill(COSName.DEVICERGB, operands));
        put(operators, "k", operands -> fill(COSName.DEVICECMYK, operands));
    }

    private void fill(PdfOperands operands) throws IOException {
        operands.requireColor();
        PdfGraphicsState state = context.state();
        state.fill = state.fill.with(operands, context.resources());
    }

    private void fill(COSName space, PdfOperands operands) throws IOException {
        operands.requireColor();
        context.state().fill = PdfFillColor.in(space, context.resources());
        fill(operands);
    }

    private void color(PdfOperands operands) throws IOException {
        operands.requireColor();
        PdfGraphicsState state = context.state();
        state.strokeColor = operands.endWithName() || state.strokeSpace instanceof PDPattern
                ? Optional.empty()
                : Optional.of(colors.srgb(
                        state.strokeSpace,
                        operands.components(state.strokeSpace.getNumberOfComponents()),
                        context.resources()));
    }

    private void deviceColor(COSName name, PdfOperands operands) throws IOException {
        operands.requireColor();
        context.state().strokeSpace = colors.space(name, context.resources());
        color(operands);
    }

    private void dash(COSArray lengths, double phase) {
        StrokeStyle.requireFewDashes(lengths.size());
        double[] dashLengths = new double[lengths.size()];
        for (int k = 0; k < dashLengths.length; k++) {
            dashLengths[k] = lengths.getObject(k) instanceof COSNumber number ? number.floatValue() : 0;
        }
        context.state().dashLengths = dashLengths;
        context.state().dashPhase = phase;
    }

    /** A parameter dictionary (8.4.5). */
    private void parameters(COSDictionary parameters) throws IOException {
        PdfGraphicsState state = context.state();
        state.lineWidth = Math.abs(parameters.getFloat(COSName.LW, (float) state.lineWidth));
        state.strokeAlpha = parameters.getFloat(COSName.CA, (float) state.strokeAlpha);
        state.fillAlpha = parameters.getFloat(COSName.CA_NS, (float) state.fillAlpha);
        if (parameters.containsKey(COSName.BM)) {
            state.laidOver = isNormal(parameters.getDictionaryObject(COSName.BM));
        }
        if (parameters.containsKey(COSName.SMASK)) {
            state.maskBy(
                    parameters.getDictionaryObject(COSName.SMASK) instanceof COSDictionary mask
                            ? masks.of(mask, state.toPage, context.resources())
                            : PdfMask.NONE);
        }
        if (parameters.containsKey(COSName.LC)) {
            state.cap = PdfGraphicsState.cap(parameters.getInt(COSName.LC));
        }
        if (parameters.containsKey(COSName.LJ)) {
            state.join = PdfGraphicsState.join(parameters.getInt(COSName.LJ));
        }
        COSArray dash = parameters.getCOSArray(COSName.D);
        if (dash != null && dash.size() == 2) {
            COSBase phase = dash.getObject(1);
            if (dash.getObject(0) instanceof COSArray lengths && phase instanceof COSNumber number) {
                dash(lengths, number.floatValue());
            }
        }
    }

    /** Of several blend modes the first that is known is meant; all know this one. */
    private static boolean isNormal(COSBase mode) {
        COSBase first = mode instanceof COSArray modes && modes.size() > 0 ? modes.getObject(0) : mode;
        return COSName.NORMAL.equals(first) || COSName.COMPATIBLE.equals(first);
    }
}
