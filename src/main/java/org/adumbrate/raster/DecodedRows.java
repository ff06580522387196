package org.adumbrate.raster;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.io.UncheckedIOException;
import java.util.Optional;
import org.adumbrate.fault.InputFault;
import org.adumbrate.geometry.PixelSize;

/**
 * The rows of a raster file, decoded by a thread of their own while others already read them.
 *
 * <p>Where rows come in order and are read in order, a window of them is kept and the decoder waits when it is a window
 * ahead of what was {@linkplain #releaseAbove released}: a raster of any height passes through. Where a raster is needed
 * whole (it is turned, or its pieces come out of order) all of it is kept: in memory if it is smaller than the given
 * allowance, else in a temporary file.
 */
public final class DecodedRows implements LightRows {
    private final RasterReader reader;
    private final RasterInfo info;
    private final PixelSize size;
    private final int capacity;
    private final boolean inTurn;
    private final RowStore store;
    private final Thread decoder;

    private final Object monitor = new Object();
    private int ready;
    private int released;
    private boolean stopped;
    private Throwable failure;
    private final Strays strays = new Strays();

    private DecodedRows(RasterReader reader, int capacity, boolean inTurn, RowStore store) {
        this.reader = reader;
        this.info = reader.info();
        this.size = info.size();
        this.capacity = capacity;
        this.inTurn = inTurn;
        this.store = store;
        this.decoder = new Thread(this::decode, "decode " + info.file().getFileName());
        decoder.setDaemon(true);
        decoder.start();
    }

    /**
     * Starts decoding with a window of rows kept.
     *
     * @param reader the file, which is closed together with these rows
     * @param window how many rows are read at a time at most, from the first not yet released
     * @param allowance bytes of samples that may be kept in memory when the raster is needed whole
     */
    public static DecodedRows windowed(RasterReader reader, int window, long allowance) throws IOException {
        return streams(reader.info()) ? windowed(reader, window, false) : whole(reader, allowance);
    }

    /**
     * Starts decoding in the way that was chosen for a canvas.
     *
     * @param reader the file, which is closed together with these rows
     * @param allowance bytes of samples that may be kept in memory when the raster is needed whole
     */
    public static DecodedRows passing(RasterReader reader, RowPassage passage, long allowance) throws IOException {
        boolean windowed =
                streams(reader.info()) && passage.rows() < reader.info().size().height();
        return windowed ? windowed(reader, passage.rows(), passage.inTurn()) : whole(reader, allowance);
    }

    private static boolean streams(RasterInfo info) {
        return info.inOrder() && info.orientation() == Orientation.TOP_LEFT;
    }

    private static DecodedRows windowed(RasterReader reader, int window, boolean inTurn) {
        int capacity = Math.min(reader.info().size().height(), window);
        return new DecodedRows(reader, capacity, inTurn, ring(reader.info(), capacity));
    }

    /**
     * Starts decoding with every row kept, so that they can be read again and in any order.
     *
     * @param reader the file, which is closed together with these rows
     * @param allowance bytes of samples that may be kept in memory; a larger raster goes to a temporary file
     */
    public static DecodedRows whole(RasterReader reader, long allowance) throws IOException {
        RasterInfo info = reader.info();
        int height = info.size().height();
        RowStore store = info.sampleBytes() <= allowance
                ? ring(info, height)
                : new SpillStore(info.size(), info.light().storedChannels(), info.type());
        return new DecodedRows(reader, height, false, store);
    }

    private static RingStore ring(RasterInfo info, int capacity) {
        return new RingStore(info.size(), info.light().storedChannels(), info.type(), capacity);
    }

    /** True when every row stays readable until these rows are closed. */
    public boolean isWhole() {
        return capacity == size.height();
    }

    @Override
    public boolean inTurn() {
        return inTurn;
    }

    /**
     * Goes through all rows from the top, which are then released if not all are kept.
     *
     * @return what was found amiss in their values
     * @throws InputFault if any are no light
     */
    public Optional<String> awaitAll() throws IOException {
        for (int row = 0; row < size.height(); row++) {
            await(row + 1);
            releaseAbove(row + 1);
        }
        return strays.note();
    }

    /** What the file says of itself. */
    public RasterInfo info() {
        return info;
    }

    @Override
    public PixelSize size() {
        return size;
    }

    @Override
    public int channels() {
        return info.light().lightChannels();
    }

    @Override
    public void read(int x, int y, int width, int height, float[] light) throws IOException {
        await(y + height);
        int channels = channels();
        for (int row = 0; row < height; row++) {
            store.decode(info.light(), x, y + row, width, light, row * width * channels);
        }
    }

    @Override
    public void releaseAbove(int row) {
        if (isWhole()) {
            return;
        }
        synchronized (monitor) {
            if (row > released) {
                released = row;
                monitor.notifyAll();
            }
        }
    }

    /** Stops the decoder and lets go of the rows and the file. */
    @Override
    public void close() throws IOException {
        synchronized (monitor) {
            stopped = true;
            monitor.notifyAll();
        }
        boolean interrupted = false;
        while (decoder.isAlive()) {
            try {
                decoder.join();
            } catch (InterruptedException e) {
                interrupted = true;
            }
        }
        if (interrupted) {
            Thread.currentThread().interrupt();
        }
        store.close();
        reader.close();
    }

    private void await(int rows) throws IOException {
        synchronized (monitor) {
            if (rows > released + capacity) {
                throw new IllegalStateException("row " + rows + " lies outside a window of " + capacity
                        + " rows from row " + released + " of " + info.file());
            }
            while (ready < rows && failure == null) {
                try {
                    monitor.wait();
                } catch (InterruptedException e) {
                    Thread.currentThread().interrupt();
                    throw new InterruptedIOException("stopped while waiting for " + info.file());
                }
            }
            if (failure != null && ready < rows) {
                throw asFault(failure);
            }
        }
    }

    private IOException asFault(Throwable cause) {
        if (cause instanceof IOException fault) {
            return fault;
        }
        if (cause instanceof UncheckedIOException wrapped) {
            return wrapped.getCause();
        }
        if (cause instanceof Error error) {
            throw error;
        }
        return new InputFault(
                info.file(), "cannot be decoded (" + cause + ")", "export it again, as PNG or TIFF if need be", cause);
    }

    private void decode() {
        Throwable end = null;
        try {
            if (info.orientation() == Orientation.TOP_LEFT) {
                reader.decode(this::put);
            } else {
                decodeTurned();
            }
            strays.refuse(info.file());
        } catch (DecodingStopped e) {
            return;
        } catch (Throwable e) {
            end = e;
        }
        if (isWhole()) {
            // rows that are held for long do not hold their file
            end = closedReader(end);
        }
        synchronized (monitor) {
            if (end == null) {
                ready = size.height();
            } else {
                failure = end;
            }
            monitor.notifyAll();
        }
    }

    private Throwable closedReader(Throwable before) {
        try {
            reader.close();
            return before;
        } catch (IOException e) {
            return before == null ? e : before;
        }
    }

    private void put(int x, int y, int pixels, Samples samples, int offset) {
        look(x, y, pixels, samples, offset);
        if (x == 0) {
            awaitRoom(y);
        }
        store.put(x, y, pixels, samples, offset);
        if (info.inOrder() && x + pixels == size.width()) {
            synchronized (monitor) {
                ready = y + 1;
                monitor.notifyAll();
            }
        }
    }

    /** The last row is not given to anyone before all are known to be light. */
    private void look(int x, int y, int pixels, Samples samples, int offset) {
        if (samples instanceof Samples.Floats floats) {
            strays.take(x, y, floats.values(), offset, pixels, info.light().storedChannels());
            if (info.inOrder() && y == info.stored().height() - 1) {
                try {
                    strays.refuse(info.file());
                } catch (InputFault e) {
                    throw new UncheckedIOException(e);
                }
            }
        }
    }

    private void decodeTurned() throws IOException {
        TurningBlock block =
                new TurningBlock(store, info.orientation(), size, info.light().storedChannels(), info.type());
        reader.decode((x, y, pixels, samples, offset) -> {
            awaitRoom(0);
            look(x, y, pixels, samples, offset);
            block.put(x, y, pixels, samples, offset);
        });
        block.flush();
    }

    private void awaitRoom(int row) {
        synchronized (monitor) {
            while (!stopped && row >= released + capacity) {
                try {
                    monitor.wait();
                } catch (InterruptedException e) {
                    throw new DecodingStopped();
                }
            }
            if (stopped) {
                throw new DecodingStopped();
            }
        }
    }
}
