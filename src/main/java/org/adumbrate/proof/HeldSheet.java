package org.adumbrate.proof;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.open.Edition;
import org.adumbrate.proof.text.HeldText;
import org.adumbrate.proof.text.TextState;
import org.adumbrate.sheetfile.edit.SheetText;

/** A sheet held open: its text as it is written, the text that is being tried, and what is made of both. */
final class HeldSheet {
    private final HeldText text;
    private final Memory memory;
    private final Editions pictures;
    private final Editions looks;
    private Optional<SheetText> tried = Optional.empty();
    private volatile long lastChange = System.nanoTime();

    /** @param listener hears of each new state of the text, and must not take long */
    HeldSheet(Path file, Memory memory, Consumer<TextState> listener) throws IOException {
        this.memory = memory;
        this.pictures = new Editions(file, memory);
        this.looks = new Editions(file, memory);
        this.text = HeldText.open(file, state -> {
            changed(state);
            listener.accept(state);
        });
    }

    /** Its text. */
    HeldText text() {
        return text;
    }

    /** What remembers its parts. */
    Memory memory() {
        return memory;
    }

    private void changed(TextState state) {
        settle();
        if (state.by() == TextState.By.OTHER) {
            pictures.anew(state.text());
            looks.anew(state.text());
        } else {
            looks.of(state.text());
        }
    }

    /** Takes a text that is tried and not written. */
    synchronized Edition tries(SheetText next) {
        lastChange = System.nanoTime();
        tried = Optional.of(next);
        return pictures.of(next);
    }

    /** Lets go of what was tried. */
    synchronized void settle() {
        lastChange = System.nanoTime();
        tried = Optional.empty();
    }

    /** What pictures are made of: the text that is tried, if that is asked for and one is; else what is written. */
    Edition pictured(boolean isTried) {
        return pictures.of(
                isTried
                        ? triedText().orElseGet(() -> text.state().text())
                        : text.state().text());
    }

    private synchronized Optional<SheetText> triedText() {
        return tried;
    }

    /** What is looked at beside the pictures: findings, and where things are. */
    Edition looked() {
        return looks.of(text.state().text());
    }

    /** Lets all work on it end. */
    void end() {
        pictures.end();
        looks.end();
    }

    /** How long nothing was changed or tried, in milliseconds. */
    long quietMs() {
        return (System.nanoTime() - lastChange) / 1_000_000;
    }
}
