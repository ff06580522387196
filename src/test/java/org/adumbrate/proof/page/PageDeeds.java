package org.adumbrate.proof.page;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.openqa.selenium.Keys;

/**
 * Deeds at the proof page, one a line; a line that is empty or begins with {@code #} is none.
 *
 * <pre>
 * word WORDS                   clicks on words of the page
 * add WORDS                    clicks on words of the text that change the sheet at once
 * offer ITEM WORDS             selects an item, and clicks on words that are offered there
 * set KEY TEXT                 clicks on a value, types over it
 * choose KEY WORD              clicks on a value, picks a word
 * step KEY N                   clicks on a value, presses an arrow key |N| times, up where N is positive
 * slide KEY PERCENT            drags the knob of a percentage
 * pick NAME                    clicks on a choice of the list that is open
 * enter TEXT                   types into the line that is open
 * person OUTLINE X Y [FLOOR]   adds a person, and puts it down there, on that floor
 * corners X Y X Y ...          clicks on the points that are asked for in the drawing, and closes a region with Enter
 * rename ITEM NAME             clicks on the name of an item, types another
 * click X Y                    clicks on the sheet, in mm
 * drag X Y X Y                 drags on the sheet
 * press KEY ...                presses keys, named as WebDriver names them, or a single letter
 * deliver                      delivers, and waits for the results
 * picture NAME                 keeps what the page looks like
 * </pre>
 */
final class PageDeeds {
    private final PageHand hand;
    private final Path way;

    PageDeeds(PageHand hand, Path way) {
        this.hand = hand;
        this.way = way;
    }

    void all(List<String> deeds) throws IOException {
        for (int k = 0; k < deeds.size(); k++) {
            String deed = deeds.get(k).strip();
            if (deed.isEmpty() || deed.startsWith("#")) {
                continue;
            }
            try {
                one(deed);
            } catch (IllegalStateException e) {
                hand.picture(way.resolve("stuck.png"));
                throw new IOException("line " + (k + 1) + ", " + deed + ": " + e.getMessage(), e);
            }
            System.out.println(hand.actions() + "\t" + deed + (hand.said().isEmpty() ? "" : "\t| " + hand.said()));
        }
    }

    private void one(String deed) throws IOException {
        String[] words = deed.split(" +", -1);
        String rest = after(deed, 1);
        switch (words[0]) {
            case "word" -> hand.word("body", rest);
            case "rename" ->
                changes(() -> {
                    select(words[1]);
                    hand.press(Keys.F2);
                    hand.enter(words[2]);
                });
            case "offer" ->
                changes(() -> {
                    select(words[1]);
                    hand.word("#text .rest.shown", after(deed, 2));
                });
            case "add" -> changes(() -> hand.word("#text", rest));
            case "set" ->
                changes(() -> {
                    hand.focus(words[1]);
                    hand.typeOver(after(deed, 2));
                });
            case "choose" ->
                changes(() -> {
                    hand.focus(words[1]);
                    if (!hand.has("#lists [role=option]")) {
                        hand.press(Keys.ENTER);
                    }
                    hand.pick(after(deed, 2));
                });
            case "step" ->
                changes(() -> {
                    hand.focus(words[1]);
                    step(Integer.parseInt(words[2]));
                });
            case "slide" -> changes(() -> hand.slide(words[1], Double.parseDouble(words[2])));
            case "pick" -> hand.pick(rest);
            case "enter" -> changes(() -> hand.enter(rest));
            case "person" -> changes(() -> person(words));
            case "corners" -> corners(words);
            case "click" -> hand.clickAt(Double.parseDouble(words[1]), Double.parseDouble(words[2]));
            case "drag" ->
                changes(() -> {
                    double[] places = numbers(words, 1);
                    hand.drag(places[0], places[1], places[2], places[3]);
                });
            case "press" ->
                hand.press(Arrays.stream(words).skip(1).map(PageDeeds::key).toArray(CharSequence[]::new));
            case "deliver" -> deliver();
            case "picture" -> hand.picture(way.resolve(rest + ".png"));
            default -> throw new IllegalStateException("no such deed");
        }
    }

    private static String after(String deed, int words) {
        String[] parts = deed.split(" +", words + 1);
        return parts.length > words ? parts[words] : "";
    }

    private static double[] numbers(String[] words, int from) {
        return Arrays.stream(words).skip(from).mapToDouble(Double::parseDouble).toArray();
    }

    private static CharSequence key(String name) {
        return name.length() == 1 ? name : Keys.valueOf(name);
    }

    /** Does what changes the sheet, and waits until the page shows the changed text. */
    private void changes(Runnable does) {
        String before = hand.version();
        does.run();
        changed(before);
    }

    private void changed(String before) {
        hand.await(() -> !hand.version().equals(before) || hand.said().startsWith("Not "), () -> "nothing changes");
        if (hand.said().startsWith("Not ")) {
            throw new IllegalStateException("refused");
        }
        hand.rest(150);
    }

    private void select(String item) {
        String handle = "#text [data-item=\"" + item + "\"]";
        hand.await(() -> hand.has(handle), () -> "no item " + item);
        if (!"true".equals(hand.all(handle).get(0).getDomAttribute("aria-pressed"))) {
            hand.click(hand.all(handle).get(0));
        }
    }

    private void step(int count) {
        Keys key = count > 0 ? Keys.ARROW_UP : Keys.ARROW_DOWN;
        for (int k = 0; k < Math.abs(count); k++) {
            hand.press(key);
        }
    }

    private void person(String[] words) {
        boolean isFirst = !hand.has("#text [data-item^='figures[']");
        hand.word("#text", isFirst ? "a person" : "another person");
        hand.pick(words[1]);
        hand.await(() -> hand.has("#overlay .ghost path"), () -> "nobody to put down");
        double x = Double.parseDouble(words[2]);
        double y = Double.parseDouble(words[3]);
        hand.point(x, y);
        hand.await(() -> hand.hint().contains(" on "), () -> "no floor there: " + hand.hint());
        hand.rest(400);
        for (int k = 0; words.length > 4 && !hand.hint().contains(" on " + words[4] + ","); k++) {
            if (k == 10) {
                throw new IllegalStateException("not on " + words[4] + ": " + hand.hint());
            }
            hand.press(Keys.TAB);
        }
        hand.clickAt(x, y);
    }

    private void corners(String[] words) {
        hand.await(() -> hand.hint().contains("sets "), () -> "nothing is being drawn");
        boolean isRegion = hand.hint().contains("sets a corner");
        String before = hand.version();
        double[] places = numbers(words, 1);
        for (int k = 0; k + 1 < places.length; k += 2) {
            hand.clickAt(places[k], places[k + 1]);
            hand.rest(200);
        }
        if (isRegion) {
            hand.press(Keys.ENTER);
        }
        changed(before);
    }

    private void deliver() {
        hand.click(hand.all("#deeds .deliver").get(0));
        hand.await(() -> hand.has("#results .progress"), () -> "nothing is delivered");
        for (int k = 0; hand.has("#results .progress"); k++) {
            if (k == 900) {
                throw new IllegalStateException("not delivered in time");
            }
            hand.rest(500);
        }
        if (!hand.results().startsWith("delivered")) {
            throw new IllegalStateException(hand.results());
        }
    }
}
