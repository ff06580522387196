package org.adumbrate.prepare.open;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import org.adumbrate.fault.Refusal;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.sheetfile.yaml.YamlText;

/**
 * Reads the lines of a sheet and sorts them to their pens while the program gets ready to be asked for them. Whoever then opens the sheet over
 * the same memory finds them; what is wrong with them is left for him to find.
 */
public final class HeadStart {
    private final Path file;
    private final Memory memory;
    private final CountDownLatch done = new CountDownLatch(1);

    private HeadStart(Path file, Memory memory) {
        this.file = file;
        this.memory = memory;
    }

    /**
     * Begins, in a thread of its own, and returns at once.
     *
     * @param file the sheet file
     * @param memory remembers what is read
     */
    public static HeadStart of(Path file, Memory memory) {
        HeadStart start = new HeadStart(file, memory);
        Thread thread = new Thread(start::read, "lines ahead");
        thread.setDaemon(true);
        thread.start();
        return start;
    }

    /** The sheet file. */
    public Path file() {
        return file;
    }

    /** What remembers the lines. */
    public Memory memory() {
        return memory;
    }

    private void read() {
        try {
            OpenSheet.of(file, memory)
                    .edition(YamlText.unmarked(YamlText.whole(file)))
                    .makeOfLines((lines, run) -> lines);
        } catch (IOException | Refusal | RuntimeException reason) {
            System.getLogger(HeadStart.class.getName())
                    .log(System.Logger.Level.DEBUG, "not read ahead: " + file, reason);
        } finally {
            done.countDown();
        }
    }

    /** Waits until it has read what it could. */
    public void await() throws InterruptedException {
        done.await();
    }
}
