package org.adumbrate.proof.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** One browser and one server for a class of tests, each of which begins with the same sheet. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
abstract class ProofPageTest {
    OpenPage page;

    @BeforeAll
    @Timeout(180) // a browser begins slowly where much else runs
    void open(@TempDir Path folder) throws IOException {
        page = OpenPage.on(PageSheet.in(folder));
    }

    @BeforeEach
    void restore() throws IOException {
        page.restore(PageSheet.TEXT);
    }

    @AfterEach
    void noComplaints() {
        assertThat(page.complaints()).isEmpty();
    }

    @AfterAll
    void close() {
        if (page != null) {
            page.close();
        }
    }
}
