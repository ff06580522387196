package org.adumbrate.proof;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.adumbrate.delivery.Watch;
import org.adumbrate.prepare.Inputs;
import org.adumbrate.prepare.memory.FileStamp;
import org.adumbrate.sheetfile.reading.SheetFileReader;

/** Looks out for what others write: the sheet file, and every file that it names. */
final class Lookout {
    private final HeldSheet sheet;
    private final Path file;
    private Map<Path, FileStamp> named = Map.of();

    Lookout(HeldSheet sheet, Path file) {
        this.sheet = sheet;
        this.file = file;
    }

    /** Begins, in a thread of its own. */
    void begin() {
        named = stamps();
        Thread thread = new Thread(this::goOn, "looking out for changes");
        thread.setDaemon(true);
        thread.start();
    }

    private void goOn() {
        try (Watch watch = new Watch(file)) {
            while (true) {
                watch.look();
                look();
                watch.await();
            }
        } catch (InterruptedIOException ended) {
            Thread.currentThread().interrupt();
        } catch (IOException unclosed) {
            System.getLogger(Lookout.class.getName()).log(System.Logger.Level.DEBUG, "not closed", unclosed);
        }
    }

    private void look() {
        sheet.text().look();
        Map<Path, FileStamp> now = stamps();
        boolean isOther = now.entrySet().stream()
                .anyMatch(one -> named.containsKey(one.getKey())
                        && !named.get(one.getKey()).equals(one.getValue()));
        named = now;
        if (isOther) {
            sheet.text().namedFilesChanged();
        }
    }

    private Map<Path, FileStamp> stamps() {
        Map<Path, FileStamp> stamps = new LinkedHashMap<>();
        for (Path input : inputs()) {
            stamps.put(input, FileStamp.of(input));
        }
        return stamps;
    }

    /** Those of the text as it was when it could last be followed. */
    private List<Path> inputs() {
        try {
            return Inputs.of(SheetFileReader.read(file)).stream()
                    .filter(input -> !input.equals(file))
                    .toList();
        } catch (IOException unfollowed) {
            return List.copyOf(named.keySet());
        }
    }
}
