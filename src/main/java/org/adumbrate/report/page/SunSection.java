package org.adumbrate.report.page;

import java.io.IOException;
import java.util.Locale;

/** Where the sun stands, and how a shadow is found on the sheet. */
final class SunSection implements Section {
    private static final String[] WINDS = {
        "north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"
    };

    private final Report report;

    SunSection(Report report) {
        this.report = report;
    }

    @Override
    public String id() {
        return "sun";
    }

    @Override
    public String title() {
        return "Sun and shadow";
    }

    @Override
    public void write(Html html) throws IOException {
        if (report.sun().isEmpty()) {
            html.element("p", "No sun is known in this view, so no shadow was constructed.");
            return;
        }
        Sunlight sun = report.sun().get();
        html.open("div", "class", "beside");
        new SunDiagram(sun).write(html);
        numbers(html, sun);
        html.closeLine();
        if (sun.upright().isPresent()) {
            new ShadowPlate(report.sheet(), sun, sun.upright().get()).write(html);
        } else {
            html.element("p", "No figure of this sheet shows its whole shadow, so none is constructed here.");
        }
        html.element(
                "p",
                "Illustrative: not for permits or claims about daylight. Local codes and licensed practice decide.",
                "class",
                "small");
    }

    private static void numbers(Html html, Sunlight sun) throws IOException {
        double azimuth = sun.direction().azimuthDeg(sun.northDeg());
        html.open("dl");
        term(html, "Known by", sun.source());
        term(
                html,
                "Azimuth",
                Words.number(azimuth, 1) + "° clockwise from north: the sun stands in the " + wind(azimuth));
        term(html, "Altitude", Words.number(sun.direction().altitudeDeg(), 1) + "° above the horizon");
        term(
                html,
                "Shadow",
                Words.number(sun.direction().shadowPerMetre(), 2)
                        + " m long for each metre of height, falling toward the " + wind(azimuth + 180));
        term(html, "North", Words.number(sun.northDeg(), 1) + "° clockwise from the model's +Y");
        html.closeLine();
    }

    static String wind(double azimuthDeg) {
        return WINDS[(int) Math.round(azimuthDeg / 45) % 8];
    }

    private static void term(Html html, String term, String value) throws IOException {
        html.open("div").element("dt", term).element("dd", value).closeLine();
    }

    static String degrees(double value) {
        return String.format(Locale.ROOT, "%.0f°", value);
    }
}
