package org.adumbrate.preflight;

import java.util.ArrayList;
import java.util.List;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.preflight.Observation.Severity;
import org.adumbrate.sheetfile.reading.SheetFile;

/** Collects what rules observe about a sheet file. */
final class Observations {
    private final SheetFile asked;
    private final List<Observation> all = new ArrayList<>();

    Observations(SheetFile asked) {
        this.asked = asked;
    }

    /** Reasons and remedies that belong together. */
    record Advice(String why, String remedy) {}

    void add(Severity severity, String key, String what, Advice advice) {
        add(severity, key, List.of(), what, advice);
    }

    void add(Severity severity, String key, List<SheetPoint> at, String what, Advice advice) {
        all.add(new Observation(severity, key, asked.place(key), at, what, advice.why(), advice.remedy()));
    }

    void add(Observation observation) {
        all.add(observation);
    }

    List<Observation> all() {
        return all;
    }
}
