package org.adumbrate.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import org.adumbrate.fault.OutputFault;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TemporaryFileTest {
    @TempDir
    private Path folder;

    @Test
    void whatIsWrittenCanBeReadAndIsGoneOnceClosed() throws IOException {
        ByteBuffer bytes = ByteBuffer.allocate(3);
        try (FileChannel file = TemporaryFile.open(folder)) {
            file.write(ByteBuffer.wrap(new byte[] {1, 2, 3}), 1_000_000);
            assertThat(file.read(bytes, 1_000_000)).isEqualTo(3);
        }
        assertThat(bytes.array()).containsExactly(1, 2, 3);
        assertThat(folder).isEmptyDirectory();
    }

    /** So that a process that is killed leaves nothing. */
    @Test
    void itHasNoNameWhileItIsOpen() throws IOException {
        assumeThat(folder.getFileSystem().supportedFileAttributeViews()).contains("posix");
        try (FileChannel file = TemporaryFile.open(folder)) {
            assertThat(file.isOpen()).isTrue();
            assertThat(folder).isEmptyDirectory();
        }
    }

    @Test
    void aFolderThatIsNotThereIsToldWithWhatToDo() {
        Path missing = folder.resolve("tmp");
        assertThatThrownBy(() -> TemporaryFile.open(missing))
                .isInstanceOf(OutputFault.class)
                .hasMessageStartingWith(missing + ": the temporary folder")
                .hasMessageContaining("there is no such folder")
                .hasMessageContaining("-Djava.io.tmpdir=")
                .hasMessageNotContaining("\n");
    }
}
