package org.adumbrate.perspective;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.OffsetDateTime;
import org.adumbrate.fault.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SunAtTest {
    /**
     * The worked example of Reda and Andreas, NREL/TP-560-34302, appendix: 17 October 2003, 12:30:30 at UTC-7, delta T 67 s,
     * 1830.14 m, 820 hPa, 11 degrees C. Their horizon refraction of 0.5667 plays no part here.
     */
    @Test
    void agreesWithTheWorkedExampleOfItsAuthors() {
        SunAt sun = SunAt.of(
                OffsetDateTime.parse("2003-10-17T12:30:30-07:00"),
                39.742476,
                -105.1786,
                new SunAt.Air(1830.14, 820, 11),
                67);
        assertThat(sun.azimuthDeg()).isCloseTo(194.340241, within(1e-6));
        assertThat(90 - sun.altitudeDeg()).isCloseTo(50.11162, within(1e-5));
        assertThat(sun.airlessAltitudeDeg()).isCloseTo(39.872046, within(1e-5));
    }

    /**
     * Azimuth and airless altitude by astropy with measured earth rotation (topocentric, WGS84, height 0); refracted altitude by
     * Saemundsson's formula at 1010 hPa and 10 degrees C. Near the zenith the azimuth is worth little, so it is held to 0.01
     * degrees on the sky.
     */
    @ParameterizedTest
    @CsvSource({
        "0, 0, 2020-03-20T12:00Z, 85.8050, 88.1600, 88.1605",
        "0, 0, 2020-03-20T09:00Z, 89.8831, 43.1539, 43.1719",
        "23.4366, 0, 2020-06-20T12:00Z, 90.0217, 89.6115, 89.6116",
        "-23.4366, 133.88, 2020-12-21T03:00Z, 90.1409, 89.4039, 89.4040",
        "51.4779, 0, 2021-06-21T16:00+01:00, 247.6897, 45.9330, 45.9493",
        "69.6492, 18.9553, 2021-06-20T22:44Z, 359.5598, 3.0847, 3.3086",
        "64.1466, -21.9426, 2021-12-21T13:30Z, 180.9280, 2.4099, 2.6672",
        "40.7128, -74.0060, 2021-09-22T16:00-04:00, 239.4485, 30.5542, 30.5827",
        "-33.8688, 151.2093, 2021-12-21T09:00+11:00, 94.4862, 38.4925, 38.5137",
        "-33.9249, 18.4241, 2021-06-21T13:00Z, 326.6940, 24.6317, 24.6682",
        "1.3521, 103.8198, 2021-09-23T02:00Z, 91.5401, 45.6923, 45.7088",
        "-18, 179.9, 2021-03-21T09:00+12:00, 73.6603, 40.4276, 40.4474",
        "-18, -179.9, 2021-03-20T09:00-12:00, 73.5526, 40.6100, 40.6297",
        "-77.8419, 166.6863, 2021-12-21T00:00Z, 14.4040, 35.2546, 35.2785",
        "41.9028, 12.4964, 2021-03-20T16:45Z, 264.6631, 6.0901, 6.2284"
    })
    void agreesWithAnotherProgramAllOverTheEarth(
            double latitude, double longitude, String at, double azimuth, double airless, double altitude)
            throws Refusal {
        SunAt sun = SunAt.of(OffsetDateTime.parse(at), latitude, longitude);
        double onTheSky = Math.cos(Math.toRadians(airless));
        assertThat(sun.azimuthDeg()).isCloseTo(azimuth, within(0.002 / onTheSky));
        assertThat(sun.airlessAltitudeDeg()).isCloseTo(airless, within(0.002));
        assertThat(sun.altitudeDeg()).isCloseTo(altitude, within(0.003));
        assertThat(sun.direction(0).degreesTo(SunDirection.of(azimuth, altitude, 0)))
                .isLessThan(0.002);
    }

    @Test
    void northTurnsTheDirection() throws Refusal {
        SunAt sun = SunAt.of(OffsetDateTime.parse("2021-09-22T20:00Z"), 40.7128, -74.006);
        assertThat(sun.direction(24).azimuthDeg(24)).isCloseTo(sun.azimuthDeg(), within(1e-9));
        assertThat(sun.direction(24).azimuthDeg(0)).isCloseTo(sun.azimuthDeg() + 24, within(1e-9));
    }

    /** The longest day in London: almanacs have sunrise at 04:43 and sunset at 21:21 summer time. */
    @Test
    void aSunThatIsDownCastsNoShadowAndTheDaysHoursAreTold() throws Refusal {
        SunAt night = SunAt.of(OffsetDateTime.parse("2021-06-21T02:00+01:00"), 51.5074, -0.1278);
        assertThat(night.isUp()).isFalse();
        assertThatThrownBy(() -> night.direction(0))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("degrees below the horizon of 51.5074, -0.1278")
                .hasMessageContaining("rises at 04:43 and sets at 21:21 (+01:00)");
    }

    @Test
    void aSunThatStaysDownAllDayIsTold() throws Refusal {
        SunAt polar = SunAt.of(OffsetDateTime.parse("2021-12-21T12:00+01:00"), 78.2232, 15.6267);
        assertThatThrownBy(() -> polar.direction(0))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("it does not rise there on that day");
    }

    @ParameterizedTest
    @CsvSource({"-3000-01-01T00:00Z", "3000-01-01T00:00Z", "+999999999-12-31T23:59Z", "-999999999-01-01T00:00Z"})
    void yearsForWhichNobodyKnowsAreRefused(String at) {
        assertThatThrownBy(() -> SunAt.of(OffsetDateTime.parse(at), 0, 0))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("-1999 to 2999");
    }

    @ParameterizedTest
    @CsvSource({"-1999-06-01T12:00Z", "0001-06-01T12:00Z", "1066-06-01T12:00Z", "2999-12-31T12:00Z"})
    void distantYearsAreAnswered(String at) throws Refusal {
        assertThat(SunAt.of(OffsetDateTime.parse(at), 0, 0).altitudeDeg()).isBetween(60.0, 90.0);
    }

    @Test
    void thereAreNoPlacesBeyondThePoles() {
        OffsetDateTime at = OffsetDateTime.parse("2021-12-21T12:00Z");
        assertThatIllegalArgumentException().isThrownBy(() -> SunAt.of(at, 90.5, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> SunAt.of(at, 0, Double.NaN));
    }
}
