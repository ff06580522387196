package org.adumbrate.output;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import org.adumbrate.fault.OutputFault;

/** Buffers what is written, and turns failures into faults that name the output. */
final class FaultingStream extends OutputStream {
    private static final int BUFFER = 1 << 16;

    private interface Writing {
        void run() throws IOException;
    }

    private final Path target;
    private final OutputStream buffered;

    FaultingStream(Path target, OutputStream file) {
        this.target = target;
        this.buffered = new BufferedOutputStream(file, BUFFER);
    }

    @Override
    public void write(int b) throws OutputFault {
        faulting(() -> buffered.write(b));
    }

    @Override
    public void write(byte[] bytes, int from, int length) throws OutputFault {
        faulting(() -> buffered.write(bytes, from, length));
    }

    @Override
    public void flush() throws OutputFault {
        faulting(buffered::flush);
    }

    @Override
    public void close() throws OutputFault {
        faulting(buffered::close);
    }

    private void faulting(Writing writing) throws OutputFault {
        try {
            writing.run();
        } catch (IOException e) {
            throw OutputFile.fault(target, e);
        }
    }
}
