package org.adumbrate.preflight;

import org.adumbrate.preflight.Observation.Severity;
import org.adumbrate.preflight.Observations.Advice;

/** Lines that are there and not drawn, and pens that draw nothing. */
final class HiddenRule implements Rule {
    @Override
    public void look(CheckedSheet sheet, Observations found) {
        sheet.asked().sheet().pens().forEach((name, pen) -> {
            int strokes = sheet.strokes().getOrDefault(name, 0);
            String key = "pens." + name;
            if (pen.hidden() && strokes > 0) {
                found.add(
                        Severity.NOTE,
                        key,
                        key + " is hidden, and " + strokes + " strokes with it",
                        new Advice("they are in the export and not in the print", "leave hidden out to draw them"));
            } else if (strokes == 0) {
                found.add(
                        Severity.WARNING,
                        key,
                        key + " draws nothing: no stroke has the colour " + pen.color(),
                        new Advice(
                                "its lines may have changed colour in the model, and are then drawn by no pen",
                                "see the colours with adumbrate lines"));
            }
        });
    }
}
