package org.adumbrate.linework.svg;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.adumbrate.fault.InputFault;
import org.adumbrate.linework.LeftOut;
import org.adumbrate.linework.LineSheet;
import org.adumbrate.linework.ReadingNote;
import org.adumbrate.linework.clip.TooIntricateException;
import org.adumbrate.linework.page.LibraryWords;
import org.adumbrate.linework.page.StrokeCollector;

/** Reads an SVG. */
public final class SvgSheetReader {
    private SvgSheetReader() {}

    /**
     * Reads a line sheet.
     *
     * @throws InputFault if the file is not sound SVG with a size and lines
     */
    public static LineSheet read(Path file) throws InputFault {
        SvgDocument document = SvgDocument.read(file);
        try {
            SvgPageFrame frame = SvgPageFrame.of(file, document);
            StrokeCollector found = new StrokeCollector(file, frame.size());
            SvgScene scene = SvgScene.outermost(
                    frame.toPage(), found.wholePage(), SvgStyle.INITIAL, frame.userWidth(), frame.userHeight());
            new SvgWalk(file, document, new SvgStrokes(document, found)).drawRoot(scene, frame);
            tell(LeftOut.Kind.OUTSIDE, document.sheetsOutside(), found);
            tell(LeftOut.Kind.STYLE, document.cascade().styles().rulesNotUnderstood(), found);
            tell(LeftOut.Kind.MEDIUM, document.cascade().styles().rulesOfOneMedium(), found);
            tell(LeftOut.Kind.UNIT, SvgUnits.unsettled(document.root()), found);
            return sheet(document, found);
        } catch (TooIntricateException e) {
            throw new InputFault(file, e.getMessage(), "export fewer objects at a time", e);
        } catch (RuntimeException e) {
            throw new InputFault(
                    file, "cannot be read as SVG (" + LibraryWords.of(e) + ")", "export it again as plain SVG", e);
        }
    }

    private static LineSheet sheet(SvgDocument document, StrokeCollector found) throws InputFault {
        List<String> words = new ArrayList<>();
        if (!document.cascade().of(document.root()).isDisplayed()) {
            words.add("its outermost element is not displayed");
        }
        document.circles().ifPresent(words::add);
        LineSheet sheet = found.ifAny(1).orElseThrow(() -> found.noLine(String.join("; ", words)));
        return sheet.with(words.stream()
                .map(told -> new ReadingNote(ReadingNote.Kind.SKIPPED, told))
                .toList());
    }

    private static void tell(LeftOut.Kind kind, int times, StrokeCollector found) {
        for (int k = 0; k < times; k++) {
            found.leftOut(kind);
        }
    }
}
