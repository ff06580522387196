package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class ResultStreamTest {
    private final StringWriter err = new StringWriter();

    private int end(OutputStream out, int code) {
        ResultStream results = new ResultStream(out);
        PrintWriter writer = new PrintWriter(results, true, StandardCharsets.UTF_8);
        writer.println("a result");
        return results.end(code, new PrintWriter(err, true));
    }

    private static OutputStream failing(String reason) {
        return new OutputStream() {
            @Override
            public void write(int b) throws IOException {
                throw new IOException(reason);
            }
        };
    }

    @Test
    void resultsThatAreLostAreToldInOneLine() {
        assertThat(end(failing("No space left on device"), ExitCode.DONE)).isEqualTo(ExitCode.INPUT_OUTPUT);
        assertThat(err.toString().trim())
                .startsWith("standard output: cannot be written (No space left on device);")
                .doesNotContain("\n");
        assertThat(end(failing("No space left on device"), ExitCode.REFUSED)).isEqualTo(ExitCode.REFUSED);
    }

    @Test
    void aReaderThatHasSeenEnoughIsNoFailure() {
        assertThat(end(failing("Broken pipe"), ExitCode.DONE)).isEqualTo(ExitCode.DONE);
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void whatIsWrittenArrives() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        assertThat(end(bytes, ExitCode.REFUSED)).isEqualTo(ExitCode.REFUSED);
        assertThat(bytes.toString(StandardCharsets.UTF_8)).startsWith("a result");
        assertThat(err.toString()).isEmpty();
    }
}
