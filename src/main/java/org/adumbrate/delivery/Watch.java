package org.adumbrate.delivery;

import java.io.Closeable;
import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.adumbrate.prepare.Inputs;
import org.adumbrate.prepare.memory.FileStamp;
import org.adumbrate.sheetfile.reading.SheetFile;
import org.adumbrate.sheetfile.reading.SheetFileReader;

/**
 * The inputs of a sheet, looked at when the platform gives notice of a change, and every so often anyway: that works on every kind of
 * drive, on those of a network too, of which no notices arrive.
 */
public final class Watch implements Closeable {
    /** Between two looks. */
    private static final long LOOK_MS = 100;

    /** Exports are written bit by bit; so long nothing must have changed. */
    private static final long QUIET_MS = 150;

    /** The same where each bit that is written gives notice. */
    private static final long QUIET_NOTICED_MS = 25;

    /** A sheet file that could not be followed may only want a file that is not there yet. */
    private static final long AGAIN_MS = 1_000;

    private final Path file;
    private final ChangeNotices notices = ChangeNotices.begin();
    private List<Path> inputs;
    private boolean followed;
    private Map<Path, FileStamp> seen = Map.of();

    /** @param file the sheet file */
    public Watch(Path file) {
        this.file = file;
        this.inputs = List.of(file);
    }

    /** Notes how the inputs are; to be called before they are built from. */
    public void look() {
        try {
            SheetFile asked = SheetFileReader.read(file);
            inputs = Inputs.of(asked);
            followed = true;
        } catch (IOException unfollowed) {
            // the build tells what is wrong; what was watched before is watched on
            followed = false;
        }
        notices.follow(inputs);
        seen = stamps();
    }

    /**
     * Waits until an input has changed since the last look, and nothing changes any more.
     *
     * @throws InterruptedIOException if the thread is interrupted
     */
    public void await() throws InterruptedIOException {
        long waited = 0;
        boolean noticed = false;
        while (stamps().equals(seen)) {
            noticed = notices.await(LOOK_MS);
            waited += noticed ? 0 : LOOK_MS;
            if (!followed && waited >= AGAIN_MS) {
                waited = 0;
                if (canBeFollowed()) {
                    return;
                }
            }
        }
        Map<Path, FileStamp> last = stamps();
        while (true) {
            noticed |= notices.await(noticed ? QUIET_NOTICED_MS : QUIET_MS);
            Map<Path, FileStamp> now = stamps();
            if (now.equals(last)) {
                return;
            }
            last = now;
        }
    }

    private boolean canBeFollowed() {
        try {
            SheetFileReader.read(file);
            return true;
        } catch (IOException unfollowed) {
            return false;
        }
    }

    private Map<Path, FileStamp> stamps() {
        Map<Path, FileStamp> stamps = new LinkedHashMap<>();
        inputs.forEach(input -> stamps.put(input, FileStamp.of(input)));
        return stamps;
    }

    @Override
    public void close() throws IOException {
        notices.close();
    }
}
