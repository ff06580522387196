package org.adumbrate.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Text in a page stays text. */
class HtmlTest {
    @Test
    void textNeitherOpensElementsNorTurnsWhatFollows() {
        assertThat(Html.escaped("<b> & \"plan\u202egpj.pdf\" \u0007"))
                .isEqualTo("&lt;b&gt; &amp; &quot;plan\\u202Egpj.pdf&quot; \\u0007");
        assertThat(Html.escaped("two\nlines")).isEqualTo("two\nlines");
    }
}
