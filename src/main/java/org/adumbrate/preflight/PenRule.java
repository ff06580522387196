package org.adumbrate.preflight;

import java.util.Locale;
import java.util.Map;
import org.adumbrate.geometry.Srgb;
import org.adumbrate.preflight.Observation.Severity;
import org.adumbrate.preflight.Observations.Advice;
import org.adumbrate.sheetfile.PenStyle;
import org.adumbrate.sheetfile.Sheet;
import org.adumbrate.sheetfile.Veil;

/** Whether lines are thick enough to print. */
final class PenRule implements Rule {
    /** The thinnest line of ISO 128-2:2020, in mm. */
    private static final double THINNEST_MM = 0.13;

    /** What printers draw as one dot of their own, however fine that is; common practice: a seventh of a point. */
    private static final double HAIRLINE_MM = 0.05;

    /** The largest component of an ink that prints nearly as black does, of 255. */
    private static final int NEARLY_BLACK = 80;

    private static final double ROUNDING = 1e-6;

    @Override
    public void look(CheckedSheet checked, Observations found) {
        Sheet sheet = checked.asked().sheet();
        for (Map.Entry<String, PenStyle> entry : sheet.pens().entrySet()) {
            PenStyle pen = entry.getValue();
            if (!pen.hidden()) {
                String key = "pens." + entry.getKey();
                thin(key, pen.weight().mm(), found);
                screened(key, pen, found);
                pen.fades()
                        .filter(far -> sheet.passes().depth().isPresent())
                        .ifPresent(far -> faded(key, pen.weight().mm() * far.share(), found));
            }
        }
        sheet.cut().ifPresent(cut -> {
            thin("cut.outline", cut.outline().mm(), found);
            cut.hatch().ifPresent(hatch -> thin("cut.hatch.width", hatch.width().mm(), found));
        });
        sheet.profile().ifPresent(profile -> thin("profile", profile.width().mm(), found));
        for (Map.Entry<String, Veil> veil : sheet.veils().entrySet()) {
            veil.getValue()
                    .etch()
                    .ifPresent(etch -> thin(
                            "veils." + veil.getKey() + ".etch", etch.width().mm(), found));
        }
        thin("entourage.outline", sheet.entourage().outline().mm(), found);
    }

    private static void thin(String key, double mm, Observations found) {
        if (mm <= 0 || mm >= THINNEST_MM - ROUNDING) {
            return;
        }
        boolean hairline = mm < HAIRLINE_MM;
        found.add(
                hairline ? Severity.ERROR : Severity.WARNING,
                key,
                String.format(
                        Locale.ROOT,
                        "%s draws lines of %.3f mm, %s",
                        key,
                        mm,
                        hairline ? "a hairline" : "thinner than the print minimum of 0.13 mm"),
                new Advice(
                        hairline
                                ? "a hairline is as thin as the printer can draw: nothing, or a dot, by machine"
                                : "thinner lines than ISO 128-2 has break up or vanish, the more so in reduced copies",
                        "make it 0.13 mm or wider"));
    }

    /** Only the farthest lines are so thin. */
    private static void faded(String key, double mm, Observations found) {
        if (mm < THINNEST_MM - ROUNDING) {
            found.add(
                    mm < HAIRLINE_MM ? Severity.WARNING : Severity.NOTE,
                    key + ".fades",
                    String.format(
                            Locale.ROOT, "%s fades to %.3f mm, thinner than the print minimum of 0.13 mm", key, mm),
                    new Advice("the farthest lines may break up", "let it fade less, or draw it wider"));
        }
    }

    private static void screened(String key, PenStyle pen, Observations found) {
        Srgb ink = pen.ink();
        boolean grey = Math.max(ink.red(), Math.max(ink.green(), ink.blue())) > NEARLY_BLACK;
        if (grey && pen.weight().mm() <= THINNEST_MM + ROUNDING) {
            found.add(
                    Severity.NOTE,
                    key,
                    String.format(
                            Locale.ROOT,
                            "%s draws in %s with %.2f mm",
                            key,
                            ink,
                            pen.weight().mm()),
                    new Advice(
                            "offset and laser printers screen what is not black, and a thin grey line becomes dots",
                            "draw it in black, or a little wider, if the printer screens it"));
        }
    }
}
