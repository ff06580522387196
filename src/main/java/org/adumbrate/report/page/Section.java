package org.adumbrate.report.page;

import java.io.IOException;

/** A section of the page. */
interface Section {
    /** What links to it name it by. */
    String id();

    /** Its heading. */
    String title();

    /** Writes what stands under the heading. */
    void write(Html html) throws IOException;
}
