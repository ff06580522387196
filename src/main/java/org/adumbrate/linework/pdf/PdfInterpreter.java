package org.adumbrate.linework.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.adumbrate.geometry.PagePoint;
import org.adumbrate.geometry.VectorPath;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.clip.TooIntricateException;
import org.adumbrate.linework.page.PathTracer;
import org.adumbrate.linework.page.StrokeCollector;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/**
 * Runs content streams and collects what they stroke. The library's own engine is passed by: it looks fonts up and decodes
 * images, none of which is wanted here, works in single precision, and steps over damage that a drawing must not hide.
 */
final class PdfInterpreter {
    private static final int MOST_OPERATORS = 30_000_000;

    /** A colour of 32 inks and a name is the longest list there is. */
    private static final int MOST_OPERANDS = 1000;

    /** Content read all told, a form as often as it is drawn. */
    private static final long MOST_BYTES = 200_000_000;

    private final PdfContext context;
    private final StrokeCollector found;
    private final PdfAreas areas;
    private final Map<String, PdfOperator> operators = new HashMap<>();
    private final PdfForms contents = new PdfForms();
    private int formDepth;
    private int forms;
    private int operatorsRun;
    private long bytesRun;
    private int stateFloor = 1;

    PdfInterpreter(PdfPageFrame frame, PdfVisibility layers, StrokeCollector found) {
        this.context = new PdfContext(frame.toPage(), found.wholePage(), layers);
        this.found = found;
        PdfColors colors = new PdfColors();
        this.areas = new PdfAreas(context, colors, found);
        new PdfPathOperators(context, found, areas).addTo(operators);
        new PdfStateOperators(context, colors).addTo(operators);
        operators.put("Q", operands -> context.restoreTo(Math.max(stateFloor, context.depth() - 1)));
        operators.put("Do", operands -> draw(operands.get(0, COSName.class)));
        operators.put("BMC", operands -> layers.open());
        operators.put("BDC", this::beginMarkedContent);
        operators.put("EMC", operands -> layers.closeTo(layers.depth() - 1));
        operators.put("sh", operands -> areas.shading(operands.get(0, COSName.class)));
        for (String text : new String[] {"Tj", "TJ", "'", "\""}) {
            operators.put(text, operands -> countText());
        }
    }

    /**
     * Runs the content of a page to its end.
     *
     * @throws IOException if it is damaged or asks for too much
     */
    void runPage(byte[] content, PDResources resources) throws IOException {
        PdfExpansion.require(content, resources.getCOSObject(), contents);
        run(content, resources);
    }

    private void run(byte[] content, PDResources resources) throws IOException {
        bytesRun += content.length;
        if (bytesRun > MOST_BYTES) {
            throw new TooIntricateException("takes more than " + MOST_BYTES + " bytes to draw");
        }
        context.useResources(resources);
        PDFStreamParser parser = new PDFStreamParser(content);
        List<COSBase> operands = new ArrayList<>();
        for (Object token = parser.parseNextToken(); token != null; token = parser.parseNextToken()) {
            if (token instanceof Operator operator) {
                run(operator, operands);
                operands.clear();
            } else {
                operands.add((COSBase) token);
                if (operands.size() > MOST_OPERANDS) {
                    throw new IOException("an operator has more than " + MOST_OPERANDS + " operands");
                }
            }
        }
    }

    private void run(Operator operator, List<COSBase> operands) throws IOException {
        if (++operatorsRun > MOST_OPERATORS) {
            throw new TooIntricateException("takes more than " + MOST_OPERATORS + " steps to draw");
        }
        PdfOperator known = operators.get(operator.getName());
        if (known != null) {
            known.run(new PdfOperands(operands));
        } else if (operator.getName().equals("BI")) {
            areas.image(operator.getImageParameters());
        }
    }

    private void draw(COSName name) throws IOException {
        COSDictionary object = context.resource(COSName.XOBJECT, name)
                .orElseThrow(() -> new IOException("the object " + name.getName() + " is missing"));
        if (COSName.IMAGE.equals(object.getCOSName(COSName.SUBTYPE))) {
            areas.image(object);
        } else if (COSName.FORM.equals(object.getCOSName(COSName.SUBTYPE)) && object instanceof COSStream stream) {
            drawForm(stream);
        }
    }

    /** Draws another stream in place, in its own coordinates and within its box (ISO 32000-1, 8.10). */
    private void drawForm(COSStream stream) throws IOException {
        if (++forms > PdfExpansion.MOST_FORMS || formDepth >= PdfExpansion.DEEPEST_FORM) {
            throw new TooIntricateException(PdfExpansion.TOO_DEEP);
        }
        PDFormXObject form = new PDFormXObject(stream);
        PDResources outerResources = context.resources();
        int outerFloor = stateFloor;
        int layerDepth = context.layers().depth();
        int stateDepth = context.depth();
        context.save();
        stateFloor = context.depth();
        formDepth++;
        COSDictionary layer = stream.getCOSDictionary(COSName.OC);
        if (layer != null) {
            context.layers().open(layer);
        }
        enter(form);
        run(contents.content(stream), form.getResources() == null ? outerResources : form.getResources());
        formDepth--;
        stateFloor = outerFloor;
        context.restoreTo(stateDepth);
        context.layers().closeTo(layerDepth);
        context.useResources(outerResources);
    }

    private void enter(PDFormXObject form) {
        PdfGraphicsState state = context.state();
        state.toPage.concatenate(form.getMatrix().createAffineTransform());
        state.enterForm();
        if (form.getCOSObject().getCOSDictionary(COSName.GROUP) != null) {
            state.enterGroup(found.strokes());
        }
        PDRectangle box = form.getBBox();
        if (box != null) {
            PathTracer outline = new PathTracer();
            outline.drawThrough(state.toPage);
            outline.rectangle(box.getLowerLeftX(), box.getLowerLeftY(), box.getWidth(), box.getHeight());
            VectorPath<PagePoint> path = outline.take();
            state.clip = state.clip.within(path, FillRule.NON_ZERO);
        }
    }

    private void beginMarkedContent(PdfOperands operands) throws IOException {
        PdfVisibility layers = context.layers();
        if (!(operands.get(0, COSBase.class) instanceof COSName)) {
            layers.open(); // a tag that is none names no layer; viewers pass over it
            return;
        }
        COSBase properties = operands.get(1, COSBase.class);
        if (!COSName.OC.equals(operands.get(0, COSName.class))) {
            layers.open();
        } else if (properties instanceof COSName name) {
            context.resource(COSName.PROPERTIES, name).ifPresentOrElse(layers::open, layers::open);
        } else if (properties instanceof COSDictionary dictionary) {
            layers.open(dictionary);
        } else {
            layers.open();
        }
    }

    private void countText() {
        if (!context.layers().hidden() && !context.state().unseen) {
            found.leftOut(LeftOut.Kind.TEXT);
        }
    }
}
