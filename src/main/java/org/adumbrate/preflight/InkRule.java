package org.adumbrate.preflight;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.adumbrate.geometry.SheetPoint;
import org.adumbrate.preflight.Observation.Severity;
import org.adumbrate.preflight.Observations.Advice;

/**
 * Whether printing inks pile up. A grey underlay prints in black alone, 100 % at most. A coloured one is turned into cyan,
 * magenta and yellow by the printer; without a profile their sum is told by the plain complements of red, green and blue.
 */
final class InkRule implements Rule {
    /** Total ink in percent that papers without a coating take; common practice, and the printer decides. */
    private static final double UNCOATED = 240;

    private static final double LEAST_SHARE = 0.001;

    @Override
    public void look(CheckedSheet sheet, Observations found) {
        Optional<TonePicture> picture = sheet.picture().filter(one -> one.channels() == 3);
        if (picture.isEmpty()) {
            return;
        }
        double most = 0;
        SheetPoint at = new SheetPoint(0, 0);
        long heavy = 0;
        for (int y = 0; y < picture.get().size().height(); y++) {
            for (int x = 0; x < picture.get().size().width(); x++) {
                double ink = ink(picture.get(), x, y);
                heavy += ink > UNCOATED ? 1 : 0;
                if (ink > most) {
                    most = ink;
                    at = picture.get().middle(x, y);
                }
            }
        }
        boolean isHeavy = heavy > LEAST_SHARE * picture.get().size().count();
        found.add(
                isHeavy ? Severity.WARNING : Severity.NOTE,
                "passes",
                List.of(at),
                String.format(
                        Locale.ROOT,
                        "the underlay is coloured; its darkest tone makes some %.0f %% of total ink",
                        most),
                new Advice(
                        "papers without a coating take some 240 %, coated ones 300 %; more ink does not dry and sets off",
                        isHeavy
                                ? "lighten the passes or their tints, or set colors: grey, which prints in black alone"
                                : "nothing; the printer's profile decides"));
    }

    private static double ink(TonePicture picture, int x, int y) {
        double sum = 0;
        for (int channel = 0; channel < 3; channel++) {
            sum += 1 - Math.pow(Math.max(0, Math.min(1, picture.at(x, y, channel))), 1 / 2.2);
        }
        return 100 * sum;
    }
}
