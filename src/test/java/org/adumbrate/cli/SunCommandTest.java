package org.adumbrate.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SunCommandTest {
    private static final String[] NEW_YORK = {"sun", "--place", "40.7128,-74.006", "--at", "2021-09-22T16:00-04:00"};

    /** Azimuth and refracted altitude as in {@code SunAtTest}: astropy, and Saemundsson's refraction. */
    @Test
    void tellsTheSunOfAPlaceAndATime() {
        Cli json = run(NEW_YORK, "--json", "-");
        assertThat(json.code()).isZero();
        assertThat(number(json, "azimuthDeg")).isCloseTo(239.449, within(0.003));
        assertThat(number(json, "altitudeDeg")).isCloseTo(30.583, within(0.003));
        assertThat(number(json, "shadowPerMetre")).isCloseTo(1 / Math.tan(Math.toRadians(30.583)), within(1e-3));
        assertThat(run(NEW_YORK).out()).startsWith("azimuth 239.45 degrees clockwise from north, altitude 30.58");
    }

    @Test
    void northOfTheModelHasNoPartInWhereTheSunStands() {
        assertThat(number(run(NEW_YORK, "--north", "24", "--json", "-"), "azimuthDeg"))
                .isCloseTo(239.449, within(0.003));
    }

    /** The second worked example of {@code VanishingPointsTest}: behind the viewer, 150 from the view, 35 high. */
    @ParameterizedTest
    @CsvSource({"0, 0, 150", "0, 10, 160", "30, 0, 120"})
    void tellsTheSunOfAShadow(double north, double turn, double azimuth) {
        Cli json = Cli.run(
                "sun",
                "--sample",
                "1050,866.666667 1050,450  768.633520,775.978280",
                "--focal",
                "1000",
                "--principal",
                "800,600",
                "--north",
                "" + north,
                "--turn",
                "" + turn,
                "--json",
                "-");
        assertThat(json.code()).isZero();
        assertThat(number(json, "azimuthDeg")).isCloseTo(azimuth, within(1e-5));
        assertThat(number(json, "altitudeDeg")).isCloseTo(35, within(1e-5));
    }

    @Test
    void tellsHowWellSeveralShadowsAgree() {
        Cli result = Cli.run(
                "sun",
                "--sample",
                "120,226 120,196 142.1,219.8",
                "--sample",
                "260,233 260,203 270.6,226.2",
                "--focal",
                "260",
                "--principal",
                "214,150.5");
        assertThat(result.code()).isZero();
        assertThat(result.out()).containsPattern("the tips of 2 shadows lie up to \\d\\.\\d\\d mm from");
    }

    @Test
    void aShadowThatDisagreesWithPlaceAndTimeIsTold() {
        Cli result = run(
                NEW_YORK,
                "--sample",
                "334.8,228.3 334.8,195.4 339.7,221.4",
                "--focal",
                "260",
                "--principal",
                "214,150.5");
        assertThat(result.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(result.err())
                .contains("the stated sun, azimuth 239.4 and altitude 30.6")
                .contains("sun at azimuth 214.")
                .contains("degrees apart")
                .contains("mm from where the stated sun casts it");
    }

    /** The third shadow climbs something: it tells of another sun than the first two. */
    @Test
    void shadowsThatDisagreeWithOneAnotherAreTold() {
        Cli result = Cli.run(
                "sun",
                "--sample",
                "120,226 120,196 142.1,219.8",
                "--sample",
                "260,233 260,203 270.6,226.2",
                "--sample",
                "330,225 330,195 352,190",
                "--focal",
                "260",
                "--principal",
                "214,150.5");
        assertThat(result.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(result.err())
                .contains("the 3 shadow samples do not tell of one sun")
                .contains("foot at (330.0, 225.0)")
                .contains("mm from where the sun of them all casts it");
    }

    @Test
    void aSunThatIsDownIsToldInASentence() {
        Cli result = Cli.run("sun", "--place", "51.5,0", "--at", "2021-06-21T02:00+01:00");
        assertThat(result.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(result.out()).isEmpty();
        assertThat(result.err().strip()).contains("degrees below the horizon").doesNotContain("\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--place 51.5,0 --at 2021-06-21T12:00 | does not say its offset from UTC",
                "--place 51.5,0 --at noon | is no date and time",
                "--place 91,0 --at 2021-06-21T12:00Z | is not a latitude from -90 to 90",
                "--place NaN,0 --at 2021-06-21T12:00Z | is not a latitude from -90 to 90",
                "--place 51.5 --at 2021-06-21T12:00Z | is not a latitude from -90 to 90",
                "--place 51.5,0 | --at=TIME",
                "--north 3 | give --place and --at",
                "--place 51.5,0 --at 2021-06-21T12:00Z --north NaN | --north must be a number",
                "--sample 1,2 --focal 260 --principal 1,2 | is not foot, head and shadow tip",
                "--sample 1,2 | see adumbrate sun --help",
            })
    void whatCannotBeUnderstoodIsTold(String arguments, String complaint) {
        Cli result = Cli.run(("sun " + arguments).split(" "));
        assertThat(result.code()).isEqualTo(ExitCode.USAGE);
        assertThat(result.err()).contains(complaint);
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "-5, 0", "NaN, 0", "260, Infinity"})
    void aViewNeedsNumbers(String focal, String turn) {
        Cli result = Cli.run("sun", "--sample", "1,9 1,5 3,8", "--focal", focal, "--principal", "0,0", "--turn", turn);
        assertThat(result.code()).isEqualTo(ExitCode.USAGE);
        assertThat(result.err()).contains("must be a number of");
    }

    @Test
    void whatCannotBeAShadowIsRefused() {
        Cli result =
                Cli.run("sun", "--sample", "100,230 100,240 120,220", "--focal", "260", "--principal", "214,150.5");
        assertThat(result.code()).isEqualTo(ExitCode.REFUSED);
        assertThat(result.err()).contains("its head is not above its foot");
    }

    private static Cli run(String[] first, String... more) {
        String[] all = java.util.Arrays.copyOf(first, first.length + more.length);
        System.arraycopy(more, 0, all, first.length, more.length);
        return Cli.run(all);
    }

    private static double number(Cli json, String key) {
        Matcher matcher = Pattern.compile("\"" + key + "\": ([-0-9.]+)").matcher(json.out());
        assertThat(matcher.find()).as(key + " in " + json.out()).isTrue();
        return Double.parseDouble(matcher.group(1));
    }
}
