package org.adumbrate.sheetfile.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Edits of every kind by chance, over all sheet files of the tree in many spellings: each does what it should and nothing else, or
 * is refused and does nothing; and all of them can be undone. {@code -Dedits=5000} makes as many as that, {@code -Dseed=2} others.
 */
class RandomEditsTest {
    private static final int EDITS = Integer.getInteger("edits", 600);

    /** How many edits follow each other before all of them are undone. */
    private static final int CHAIN = 6;

    @TempDir
    private Path folder;

    private record Step(String before, List<EditResult.Span> spans) {}

    @Test
    void eachDoesWhatItShouldAndNothingElse() throws Exception {
        Random random = new Random(Long.getLong("seed", 20_261_127));
        List<SheetText> texts = SheetTexts.all(folder, 12, random);
        RandomEdits edits = new RandomEdits(random);
        Map<String, Integer> made = new HashMap<>();
        int count = 0;
        while (count < EDITS) {
            SheetText first = texts.get(random.nextInt(texts.size()));
            SheetText text = first;
            Deque<Step> done = new ArrayDeque<>();
            for (int k = 0; k < CHAIN; k++, count++) {
                Edit edit = edits.of(text.values());
                String kind = edit.getClass().getSimpleName();
                EditResult result = text.edited(edit);
                if (result instanceof EditResult.Edited edited) {
                    String told = edit + " in\n" + text.text() + "\ngave\n"
                            + edited.text().text();
                    everyOtherByteStays(text.text(), edited, told);
                    assertThat(PlainModel.holds(text.text(), edited.text().text(), edit))
                            .as(told)
                            .isTrue();
                    assertThat(SheetTexts.reading(text).isPresent()
                                    || SheetTexts.reading(edited.text()).isEmpty())
                            .as(told)
                            .isTrue();
                    done.push(new Step(text.text(), edited.spans()));
                    text = edited.text();
                    made.merge(kind, 1, Integer::sum);
                } else {
                    assertThat(((EditResult.Refused) result).reasons()).isNotEmpty();
                    made.merge(kind + " refused", 1, Integer::sum);
                }
            }
            assertThat(undone(text.text(), done)).isEqualTo(first.text());
        }
        System.getLogger("edits").log(System.Logger.Level.INFO, made.toString());
        assertThat(List.of("Set", "Add", "Remove", "Rename", "Move"))
                .allSatisfy(kind -> assertThat(made.getOrDefault(kind, 0)).isGreaterThan(EDITS / 200));
    }

    private static void everyOtherByteStays(String before, EditResult.Edited edited, String told) {
        String after = edited.text().text();
        int old = 0;
        int now = 0;
        for (EditResult.Span span : edited.spans()) {
            assertThat(after.substring(now, span.newFrom())).as(told).isEqualTo(before.substring(old, span.oldFrom()));
            old = span.oldTo();
            now = span.newTo();
        }
        assertThat(after.substring(now)).as(told).isEqualTo(before.substring(old));
    }

    private static String undone(String text, Deque<Step> steps) {
        String undone = text;
        while (!steps.isEmpty()) {
            Step step = steps.pop();
            StringBuilder back = new StringBuilder(undone);
            List<EditResult.Span> spans = new ArrayList<>(step.spans());
            for (int k = spans.size() - 1; k >= 0; k--) {
                EditResult.Span span = spans.get(k);
                back.replace(span.newFrom(), span.newTo(), step.before().substring(span.oldFrom(), span.oldTo()));
            }
            undone = back.toString();
        }
        return undone;
    }
}
