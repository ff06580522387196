package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.page.PathTracer;
import org.adumbrate.linework.page.StrokeCollector;

/** Path construction, painting and clipping (ISO 32000-1, 8.5). */
final class PdfPathOperators {
    private enum Painting {
        NOTHING,
        FILL,
        STROKE
    }

    private final PdfContext context;
    private final StrokeCollector found;
    private final PathTracer path = new PathTracer();
    private Optional<FillRule> pendingClip = Optional.empty();

    PdfPathOperators(PdfContext context, StrokeCollector found) {
        this.context = context;
        this.found = found;
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
        operators.put("n", operands -> end(Painting.NOTHING));
        for (String fill : new String[] {"f", "F", "f*"}) {
            operators.put(fill, operands -> end(Painting.FILL));
        }
        for (String stroke : new String[] {"S", "B", "B*"}) {
            operators.put(stroke, operands -> end(Painting.STROKE));
        }
        for (String closingStroke : new String[] {"s", "b", "b*"}) {
            operators.put(closingStroke, operands -> {
                pen().close();
                end(Painting.STROKE);
            });
        }
    }

    private PathTracer pen() {
        path.drawThrough(context.state().toPage);
        return path;
    }

    /** Paints the path and then narrows the clip by it, if that was asked for. */
    private void end(Painting painting) throws IOException {
        VectorPath<PagePoint> ended = path.take();
        if (!context.layers().hidden()) {
            switch (painting) {
                case STROKE -> stroke(ended);
                case FILL -> found.otherMark();
                case NOTHING -> {}
            }
        }
        if (pendingClip.isPresent() && !ended.isEmpty()) {
            PdfGraphicsState state = context.state();
            state.clip = state.clip.within(ended, pendingClip.get());
        }
        pendingClip = Optional.empty();
    }

    /** An invisible stroke is no line; any other transparency does not matter here. */
    private void stroke(VectorPath<PagePoint> ended) throws InputFault {
        PdfGraphicsState state = context.state();
        if (state.strokeColor.isEmpty()) {
            found.otherMark();
        } else if (state.strokeAlpha > 0) {
            found.stroke(
                    ended,
                    state.clip,
                    state.style(state.strokeColor.get()),
                    context.layers().name());
        }
    }
}
