package org.adumbrate.linework.pdf;

import java.awt.geom.AffineTransform;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.adumbrate.fault.InputFault;
import org.adumbrate.linework.clip.Clip;
import org.adumbrate.linework.clip.FillRule;
import org.adumbrate.linework.clip.TooIntricateException;
import org.adumbrate.linework.page.LibraryWords;
import org.adumbrate.linework.page.PathTracer;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;

/**
 * Runs content streams and collects what they stroke. The library's own engine is passed by: it looks fonts up and decodes
 * images, none of which is wanted here, works in single precision, and steps over damage that a drawing must not hide. An
 * operator that makes no sense is passed over, as viewers do, and counted.
 */
final class PdfInterpreter {
    /** A colour of 32 inks and a name is the longest list there is. */
    private static final int MOST_OPERANDS = 1000;

    private static final int LONGEST_NAME = 20;

    /** Operators that no line depends on (ISO 32000-1, Annex A). */
    private static final Set<String> IDLE =
            Set.of("ri", "i", "M", "MP", "DP", "d0", "d1", "ID", "EI", "BI", "BX", "EX");

    private final PdfScene scene;
    private final PdfContext context;
    private final PdfMarks found;
    private final PdfAreas areas;
    private final Map<String, PdfOperator> operators = new HashMap<>();
    private int stateFloor = 1;
    private int unknownAllowed;

    PdfInterpreter(PdfScene scene, AffineTransform toPage, PdfMarks found) {
        this.scene = scene;
        this.found = found;
        this.context = new PdfContext(
                toPage,
                Clip.rectangle(0, 0, scene.size().widthMm(), scene.size().heightMm()),
                scene.layers());
        PdfColors colors = scene.colors();
        this.areas =
                new PdfAreas(context, colors, found, new PdfTiles(context, colors, scene.contents(), this::runInPlace));
        new PdfPathOperators(context, found, areas).addTo(operators);
        new PdfStateOperators(context, colors, new PdfSoftMasks(scene)).addTo(operators);
        new PdfTextOperators(context, colors, found, scene.contents(), this::runInPlace).addTo(operators);
        operators.put("Q", operands -> context.restoreTo(Math.max(stateFloor, context.depth() - 1)));
        operators.put("Do", operands -> draw(operands.get(0, COSName.class)));
        operators.put("BMC", operands -> scene.layers().open());
        operators.put("BDC", this::beginMarkedContent);
        operators.put("EMC", operands -> scene.layers().closeTo(scene.layers().depth() - 1));
        operators.put("sh", operands -> areas.shading(operands.get(0, COSName.class)));
    }

    /**
     * Runs the content of a page to its end.
     *
     * @throws IOException if it is damaged or asks for too much
     */
    void runPage(byte[] content, PDResources resources) throws IOException {
        PdfExpansion.require(content, resources.getCOSObject(), scene.contents());
        run(content, resources);
        context.restoreTo(1);
        scene.layers().closeTo(1);
    }

    /**
     * Draws a form by itself.
     *
     * @param resources that hold where it has none
     */
    void runForm(COSStream form, PDResources resources) throws IOException {
        context.useResources(resources);
        drawForm(form);
    }

    /**
     * Draws a form through a map into the coordinates of the page (ISO 32000-1, 12.5.5).
     *
     * @param placing what the form's own matrix is followed by
     */
    void runForm(COSStream form, AffineTransform placing) throws IOException {
        context.save();
        context.state().toPage.concatenate(placing);
        drawForm(form);
        context.restoreTo(1);
    }

    private void run(byte[] content, PDResources resources) throws IOException {
        scene.budget().spendBytes(content.length);
        context.useResources(resources);
        PdfTokens tokens = new PdfTokens(content, scene.skips());
        List<COSBase> operands = new ArrayList<>();
        for (Object token = tokens.next(); token != null; token = tokens.next()) {
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
        scene.budget().spendOperator();
        PdfOperator known = operators.get(operator.getName());
        try {
            if (known != null) {
                known.run(new PdfOperands(operands));
            } else if (operator.getName().equals("BI")) {
                areas.image(operator.getImageParameters());
            } else {
                passOver(operator.getName());
            }
        } catch (InputFault | DamagedContentException | TooIntricateException e) {
            throw e;
        } catch (IOException | RuntimeException e) {
            scene.skips().add(LibraryWords.of(e));
            scene.skips().requireFew(scene.budget().operators());
        }
    }

    /** Between BX and EX unknown operators are no mistake (7.8.2). */
    private void passOver(String name) throws IOException {
        if (name.equals("BX")) {
            unknownAllowed++;
        } else if (name.equals("EX")) {
            unknownAllowed = Math.max(0, unknownAllowed - 1);
        } else if (!IDLE.contains(name) && unknownAllowed == 0) {
            String told = name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME) + "...";
            throw new IOException(told + " is no operator");
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
        PDFormXObject form = new PDFormXObject(stream);
        COSDictionary layer = stream.getCOSDictionary(COSName.OC);
        int layerDepth = scene.layers().depth();
        if (layer != null) {
            scene.layers().open(layer);
        }
        runInPlace(
                stream,
                Optional.ofNullable(form.getResources()).map(PDResources::getCOSObject),
                state -> enter(form, state));
        scene.layers().closeTo(layerDepth);
    }

    private void runInPlace(COSStream stream, Optional<COSDictionary> resources, Consumer<PdfGraphicsState> enter)
            throws IOException {
        PDResources outerResources = context.resources();
        int outerFloor = stateFloor;
        int layerDepth = scene.layers().depth();
        int stateDepth = context.depth();
        byte[] content = scene.contents().content(stream);
        scene.budget().enter();
        context.save();
        stateFloor = context.depth();
        enter.accept(context.state());
        run(content, resources.map(PDResources::new).orElse(outerResources));
        scene.budget().leave();
        stateFloor = outerFloor;
        context.restoreTo(stateDepth);
        scene.layers().closeTo(layerDepth);
        context.useResources(outerResources);
    }

    private void enter(PDFormXObject form, PdfGraphicsState state) {
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
            state.clipTo(outline.take(), FillRule.NON_ZERO);
        }
    }

    private void beginMarkedContent(PdfOperands operands) throws IOException {
        PdfVisibility layers = scene.layers();
        if (operands.values().size() < 2 || !(operands.get(0, COSBase.class) instanceof COSName)) {
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
}
