package org.adumbrate.prepare.scene;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.adumbrate.fault.Refusal;
import org.adumbrate.perspective.FittedSun;
import org.adumbrate.perspective.SunAt;
import org.adumbrate.perspective.SunCheck;
import org.adumbrate.perspective.SunDirection;
import org.adumbrate.perspective.SunFit;
import org.adumbrate.perspective.SunSample;
import org.adumbrate.perspective.View;
import org.adumbrate.prepare.finding.Finding;
import org.adumbrate.sheetfile.Degrees;
import org.adumbrate.sheetfile.Sun;

/**
 * The sun of a sheet.
 *
 * @param direction toward it
 * @param finding that what is stated and what is drawn disagree, or what the drawn shadows tell
 */
public record SheetSun(SunDirection direction, Optional<Finding> finding) {
    private static final String KEY = "sun";

    /**
     * The sun as a sheet file asks for it.
     *
     * @throws Refusal if the sun is down, or a sample cannot be a shadow on level ground
     */
    public static SheetSun of(Sun asked, View view) throws Refusal {
        List<SunSample> samples = asked.sample().stream()
                .map(sample -> new SunSample(sample.foot(), sample.head(), sample.tip()))
                .toList();
        if (asked instanceof Sun.ByAngles angles) {
            SunDirection direction = SunDirection.of(
                    angles.azimuth().degrees(),
                    angles.altitude().degrees(),
                    angles.north().degrees());
            return checked(direction, samples, view, angles.north());
        }
        if (asked instanceof Sun.ByTime time) {
            SunDirection direction = SunAt.of(
                            time.at(),
                            time.place().latitude().degrees(),
                            time.place().longitude().degrees())
                    .direction(time.north().degrees());
            return checked(direction, samples, view, time.north());
        }
        FittedSun fitted = SunFit.of(samples, view);
        double north = ((Sun.BySample) asked).north().map(Degrees::degrees).orElse(0.0);
        Optional<String> strays = SunCheck.among(samples, fitted);
        String text = String.format(
                Locale.ROOT,
                "sun: azimuth %.1f, altitude %.1f degrees by the drawn shadows%s",
                fitted.direction().azimuthDeg(north),
                fitted.direction().altitudeDeg(),
                strays.map(told -> "; " + told).orElse(""));
        Finding.Severity severity = strays.isPresent() ? Finding.Severity.WARNING : Finding.Severity.NOTE;
        return new SheetSun(fitted.direction(), Optional.of(new Finding(severity, KEY, text)));
    }

    private static SheetSun checked(SunDirection direction, List<SunSample> samples, View view, Degrees north)
            throws Refusal {
        Optional<String> disagreement =
                samples.isEmpty() ? Optional.empty() : SunCheck.of(direction, samples, view, north.degrees());
        return new SheetSun(direction, disagreement.map(text -> new Finding(Finding.Severity.WARNING, KEY, text)));
    }
}
