package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.page.PathTracer;
import org.adumbrate.linework.page.StrokeStyle;

/** Path construction, painting and clipping (ISO 32000-1, 8.5). */
final class PdfPathOperators {
    private final PdfContext context;
    private final PdfMarks found;
    private final PdfAreas areas;
    private final PathTracer path = new PathTracer();
    private Optional<FillRule> pendingClip = Optional.empty();

    PdfPathOperators(PdfContext context, PdfMarks found, PdfAreas areas) {
        this.context = context;
        this.found = found;
        this.areas = areas;
    }

    void addTo(Map<String, PdfOperator> operators) {
        operators.put("m", operands -> {
            double[] n = operands.numbers(2);
            pen().moveTo(n[0], n[1]);
        });
        operators.put("l", operands -> {
            double[] n = operands.numbers(2);
            pen().lineTo(n[0], n[1]);
        });
        operators.put("c", operands -> {
            double[] n = operands.numbers(6);
            pen().curveTo(n[0], n[1], n[2], n[3], n[4], n[5]);
        });
        operators.put("v", operands -> {
            double[] n = operands.numbers(4);
            pen().curveTo(path.x(), path.y(), n[0], n[1], n[2], n[3]);
        });
        operators.put("y", operands -> {
            double[] n = operands.numbers(4);
            pen().curveTo(n[0], n[1], n[2], n[3], n[2], n[3]);
        });
        operators.put("re", operands -> {
            double[] n = operands.numbers(4);
            pen().rectangle(n[0], n[1], n[2], n[3]);
        });
        operators.put("h", operands -> pen().close());
        addPainting(operators);
    }

    private void addPainting(Map<String, PdfOperator> operators) {
        operators.put("W", operands -> pendingClip = Optional.of(FillRule.NON_ZERO));
        operators.put("W*", operands -> pendingClip = Optional.of(FillRule.EVEN_ODD));
        Optional<FillRule> nothing = Optional.empty();
        Optional<FillRule> nonZero = Optional.of(FillRule.NON_ZERO);
        Optional<FillRule> evenOdd = Optional.of(FillRule.EVEN_ODD);
        operators.put("n", operands -> end(nothing, /* stroked= */ false));
        operators.put("f", operands -> end(nonZero, /* stroked= */ false));
        operators.put("F", operands -> end(nonZero, /* stroked= */ false));
        operators.put("f*", operands -> end(evenOdd, /* stroked= */ false));
        operators.put("S", operands -> end(nothing, /* stroked= */ true));
        operators.put("B", operands -> end(nonZero, /* stroked= */ true));
        operators.put("B*", operands -> end(evenOdd, /* stroked= */ true));
        operators.put("s", operands -> closeAndEnd(nothing));
        operators.put("b", operands -> closeAndEnd(nonZero));
        operators.put("b*", operands -> closeAndEnd(evenOdd));
    }

    private void closeAndEnd(Optional<FillRule> filled) throws IOException {
        pen().close();
        end(filled, /* stroked= */ true);
    }

    private PathTracer pen() {
        path.drawThrough(context.state().toPage);
        return path;
    }

    /** Paints the path, its area first, and then narrows the clip by it, if that was asked for. */
    private void end(Optional<FillRule> filled, boolean stroked) throws IOException {
        VectorPath<PagePoint> ended = path.take();
        PdfGraphicsState state = context.state();
        if (!context.layers().hidden() && !state.unseen) {
            Optional<StrokeStyle> outline =
                    stroked && state.isStrokeTaken() ? state.strokeColor.map(state::style) : Optional.empty();
            boolean done = filled.isPresent() && areas.fill(ended, filled.get(), outline);
            if (stroked && !done) {
                stroke(ended);
            }
        }
        if (pendingClip.isPresent() && !ended.isEmpty()) {
            state.clipTo(ended, pendingClip.get());
        }
        pendingClip = Optional.empty();
    }

    /** An invisible stroke is no line; any other transparency does not matter here. */
    private void stroke(VectorPath<PagePoint> ended) throws InputFault {
        PdfGraphicsState state = context.state();
        if (state.strokeColor.isEmpty()) {
            found.leftOut(LeftOut.Kind.UNCOLORED_STROKE);
        } else if (state.strokeAlpha > 0 && isSeen(ended, state)) {
            int before = found.strokes();
            found.stroke(
                    ended,
                    state.seen(),
                    state.style(state.strokeColor.get()),
                    context.layers().name());
            if (found.strokes() > before && state.lineWidth > 0 && state.pen().distorts()) {
                found.leftOut(LeftOut.Kind.DISTORTED_STROKE);
            }
        }
    }

    /** Whether a mask lets anything of it show; counts what it hides, and what it lets show in part. */
    private boolean isSeen(VectorPath<PagePoint> ended, PdfGraphicsState state) {
        if (ended.isEmpty()) {
            return true;
        }
        if (!state.mask().isNone() && state.seen().visible(ended).isEmpty()) {
            if (!state.clip().visible(ended).isEmpty()) {
                found.leftOut(LeftOut.Kind.MASKED_STROKE);
            }
            return false;
        }
        if (state.isHalfShown()) {
            found.halfShown();
        }
        return true;
    }
}
