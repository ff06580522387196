package org.adumbrate.drawing;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFStreamEngine;
import org.apache.pdfbox.contentstream.operator.DrawObject;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.contentstream.operator.markedcontent.BeginMarkedContentSequenceWithProperties;
import org.apache.pdfbox.contentstream.operator.markedcontent.EndMarkedContentSequence;
import org.apache.pdfbox.contentstream.operator.state.Restore;
import org.apache.pdfbox.contentstream.operator.state.Save;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;

/** What the sequences of marked content on a page paint, as PDFBox reads it. */
public final class MarkedContent extends PDFStreamEngine {
    private final Deque<String> open = new ArrayDeque<>();
    private final List<String> found = new ArrayList<>();
    private String last = "";

    private MarkedContent() {
        addOperator(new BeginMarkedContentSequenceWithProperties(this));
        addOperator(new EndMarkedContentSequence(this));
        addOperator(new DrawObject(this));
        addOperator(new Save(this));
        addOperator(new Restore(this));
    }

    /**
     * The sequences that paint, in order: the names of layers and the keys of items from the outermost, divided by slashes, then
     * the painting operators.
     */
    public static List<String> of(Path file) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            MarkedContent content = new MarkedContent();
            content.processPage(document.getPage(0));
            if (!content.open.isEmpty()) {
                throw new IOException("sequences are left open: " + content.open);
            }
            return content.found;
        }
    }

    @Override
    public void beginMarkedContentSequence(COSName tag, COSDictionary properties) {
        String name = properties.getString(COSName.OC.equals(tag) ? "Name" : "Key");
        if (!COSName.OC.equals(tag) && !tag.getName().equals("Figure")) {
            throw new IllegalStateException("no tag of this program: " + tag);
        }
        open.addLast(name);
        last = "";
    }

    @Override
    public void endMarkedContentSequence() {
        open.removeLast();
        last = "";
    }

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
        super.processOperator(operator, operands);
        if (operator.getName().equals("f") || operator.getName().equals("S")) {
            String where = String.join("/", open);
            if (!where.equals(last)) {
                found.add(where);
                last = where;
            }
            found.set(found.size() - 1, found.get(found.size() - 1) + " " + operator.getName());
        }
    }
}
