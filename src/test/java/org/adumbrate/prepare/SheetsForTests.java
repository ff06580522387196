package org.adumbrate.prepare;

import java.io.IOException;
import java.nio.file.Path;
import org.adumbrate.fault.Refusal;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.memory.StageClock;
import org.adumbrate.sheetfile.reading.SheetFileReader;

/** Makes sheets ready for tests. */
public final class SheetsForTests {
    private SheetsForTests() {}

    /** The sheet of a file, made ready without memory. */
    public static PreparedSheet prepared(Path file) throws IOException, Refusal {
        try (Run run = Memory.none().begin()) {
            return PreparedSheet.of(SheetFileReader.read(file), run, new StageClock(StageClock.Listener.SILENT));
        }
    }
}
