package org.adumbrate.prepare.open;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.geometry.SheetSize;
import org.adumbrate.prepare.PreparedSheet;
import org.adumbrate.prepare.memory.Memory;
import org.adumbrate.prepare.memory.Run;
import org.adumbrate.prepare.memory.StageClock;
import org.adumbrate.prepare.memory.Superseded;
import org.adumbrate.sheetfile.complaint.SheetFileFault;
import org.adumbrate.sheetfile.reading.SheetFile;
import org.adumbrate.sheetfile.reading.SheetFileReader;

/** A sheet by one text of its sheet file: read and made ready when it is first asked for. Safe for use by several threads. */
public final class Edition {
    private final Path file;
    private final String text;
    private final Memory memory;
    private final boolean isFirst;
    private final List<Run> running = new ArrayList<>();
    private final Object reading = new Object();
    private final Object making = new Object();
    private boolean superseded;
    private Optional<SheetFile> asked = Optional.empty();
    private Optional<PreparedSheet> prepared = Optional.empty();
    private volatile boolean isReady;

    /** What is made of a sheet. */
    public interface Work<T> {
        /**
         * Makes it.
         *
         * @param run remembers its parts
         */
        T of(PreparedSheet sheet, Run run) throws IOException, Refusal;
    }

    private interface Running<T> {
        T in(Run run) throws IOException, Refusal;
    }

    /** @param isFirst whether what earlier runs of the program made may help, which the next editions find in memory */
    Edition(Path file, String text, Memory memory, boolean isFirst) {
        this.file = file;
        this.text = text;
        this.memory = memory;
        this.isFirst = isFirst;
    }

    /** The text, without the mark that a file may begin with. */
    public String text() {
        return text;
    }

    /**
     * What the text asks for.
     *
     * @throws SheetFileFault if it cannot be followed
     */
    public SheetFile asked() throws SheetFileFault {
        synchronized (reading) {
            if (asked.isEmpty()) {
                asked = Optional.of(SheetFileReader.read(file, text));
            }
            return asked.get();
        }
    }

    /**
     * The sheet made ready; what cannot be is a trouble of it.
     *
     * @throws Superseded if a newer edition has taken this one's place before it was ready
     * @throws SheetFileFault if the text cannot be followed
     * @throws Refusal if a page does not fit the sheet
     * @throws IOException if a line sheet cannot be used
     */
    public PreparedSheet prepared() throws IOException, Refusal {
        synchronized (making) {
            if (prepared.isEmpty()) {
                SheetFile sheet = asked();
                prepared = Optional.of(running(run -> ready(sheet, run)));
                isReady = true;
            }
            return prepared.get();
        }
    }

    /** True once it is made ready. */
    public boolean isReady() {
        return isReady;
    }

    private PreparedSheet ready(SheetFile sheet, Run run) throws IOException, Refusal {
        List<Path> outputs = sheet.sheet().deliver().files();
        if (isFirst && !outputs.isEmpty()) {
            run.outputsIn(outputs.get(0).toAbsolutePath().getParent());
        }
        return PreparedSheet.of(sheet, run, new StageClock(StageClock.Listener.SILENT));
    }

    /**
     * Makes something of the sheet.
     *
     * @throws Superseded if a newer edition has taken this one's place before it was made
     * @throws Refusal as of {@link #prepared} or of the work
     * @throws IOException as of {@link #prepared} or of the work
     */
    public <T> T make(Work<T> work) throws IOException, Refusal {
        PreparedSheet sheet = prepared();
        return running(run -> work.of(sheet, run));
    }

    /**
     * The sheet's size, as stated or that of its first line sheet, without waiting for more than that.
     *
     * @throws SheetFileFault if the text cannot be followed
     * @throws Refusal if a page does not fit the sheet
     * @throws IOException if a line sheet cannot be used
     */
    public SheetSize size() throws IOException, Refusal {
        SheetFile sheet = asked();
        return running(run -> PreparedSheet.size(sheet, run));
    }

    /**
     * Makes something of the sheet's lines alone, without waiting until all of it is ready.
     *
     * @throws Superseded if a newer edition has taken this one's place before it was made
     * @throws Refusal if a page does not fit the sheet, or as of the work
     * @throws IOException if a line sheet cannot be used, or as of the work
     */
    public <T> T makeOfLines(Work<T> work) throws IOException, Refusal {
        SheetFile sheet = asked();
        return running(run -> work.of(PreparedSheet.linesAlone(sheet, run), run));
    }

    private <T> T running(Running<T> work) throws IOException, Refusal {
        try (Run run = begin()) {
            return work.in(run);
        }
    }

    private Run begin() {
        Run run = memory.begin();
        synchronized (running) {
            running.removeIf(Run::hasEnded);
            running.add(run);
            if (superseded) {
                run.supersede();
            }
        }
        return run;
    }

    /** Lets what is being made of it end at its next step. */
    void supersede() {
        synchronized (running) {
            superseded = true;
            running.forEach(Run::supersede);
        }
    }
}
