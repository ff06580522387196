package org.adumbrate.proof.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.adumbrate.proof.ProofServer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.openqa.selenium.Keys;

class PageEndsTest {
    @Test
    void decisionsAreToldFirstAndTheEndLast(@TempDir Path folder) throws IOException {
        List<ProofServer.Decided> decided = List.of(
                new ProofServer.Decided("passes.shadow.file", "shadow.png is the shadow: half of it is darker."),
                new ProofServer.Decided("size", "The sheet is as large as lines.svg."));
        try (OpenPage page = OpenPage.on(PageSheet.in(folder), decided)) {
            assertThat(page.find("#decided").getText()).contains("half of it is darker", "as large as lines.svg");
            page.run("document.querySelector('#decided [data-key=\"passes.shadow.file\"]').focus()");
            page.press("lines.svg", Keys.ENTER);
            page.await(() ->
                    page.line("shadow:").contains("lines.svg") || page.said().contains("Not changed"));
            page.server().close();
            page.await(() -> page.said().contains("The program has ended"));
            assertThat(page.find("#text").getText()).contains("standing");
        }
    }
}
