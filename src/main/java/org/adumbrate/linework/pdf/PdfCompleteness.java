package org.adumbrate.linework.pdf;

import java.util.ArrayDeque;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.adumbrate.linework.clip.TooIntricateException;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.pdmodel.PDDocument;

/** Looks whether a file that has lost its tail has lost objects too. */
final class PdfCompleteness {
    private static final int MOST_OBJECTS = 2_000_000;

    /** What leads from a page to others and draws nothing on it. */
    private static final Set<COSName> ELSEWHERE =
            Set.of(COSName.PARENT, COSName.P, COSName.DEST, COSName.A, COSName.getPDFName("StructParents"));

    private final Map<COSObjectKey, Long> known;
    private final Set<COSBase> seen = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Deque<COSBase> ahead = new ArrayDeque<>();
    private Optional<COSObjectKey> missing = Optional.empty();

    private PdfCompleteness(PDDocument document) {
        known = document.getDocument().getXrefTable();
    }

    /** An object that a page names and that the file lacks; nothing if it has them all. */
    static Optional<COSObjectKey> missing(PDDocument document) {
        PdfCompleteness look = new PdfCompleteness(document);
        look.meet(document.getDocumentCatalog().getCOSObject().getItem(COSName.PAGES));
        while (!look.ahead.isEmpty() && look.missing.isEmpty()) {
            look.follow(look.ahead.pop());
        }
        return look.missing;
    }

    private void meet(COSBase object) {
        if (object instanceof COSObject reference) {
            if (!known.containsKey(reference.getKey())) {
                missing = Optional.of(reference.getKey());
                return;
            }
            meet(reference.getObject());
        } else if ((object instanceof COSArray || object instanceof COSDictionary) && seen.add(object)) {
            if (seen.size() > MOST_OBJECTS) {
                throw new TooIntricateException("consists of more than " + MOST_OBJECTS + " objects");
            }
            ahead.push(object);
        }
    }

    private void follow(COSBase object) {
        if (object instanceof COSArray array) {
            array.forEach(this::meet);
        } else if (object instanceof COSDictionary dictionary) {
            dictionary.entrySet().forEach(entry -> {
                if (!ELSEWHERE.contains(entry.getKey())) {
                    meet(entry.getValue());
                }
            });
        }
    }
}
