package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static slopewright.siting.Trials.rules;
import static slopewright.siting.Trials.runway;
import static slopewright.siting.Trials.unit;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The examples of the figures of Annex 14 Vol I, 9th ed., and distances worked out by hand from its clauses. */
class NinthEditionExamplesTest {
    private static Siting site(String family, SitingRequest.Builder request) {
        return Families.site(family, request.build(), rules("icao:9th"));
    }

    /** Fig 5-20 A, its note, and B: 3 degrees, printed in degrees and minutes, here in minutes. */
    @ParameterizedTest
    @CsvSource({"four-unit-row, STANDARD, A 150 B 170 C 190 D 210", "four-unit-row, GLIDE_PATH, A 145 B 165 C 195 D 215",
        "two-unit-row, STANDARD, A 165 B 195"})
    void settingsOfTheFigure(String family, SitingRequest.Settings form, String wanted) {
        SitingRequest.Builder request = runway().settings(form);
        Siting siting = site(family, family.startsWith("two") ? request.set(Input.CODE, 2.0) : request);
        String[] words = wanted.split(" ");
        for (int i = 0; i < words.length; i += 2) {
            assertEquals(Double.parseDouble(words[i + 1]) / 60, unit(siting, words[i]).settingDeg(), 1e-9, words[i]);
        }
    }

    /** Fig 5-19: 15 m and 9 m; f) 10 m and 6 m at code 1 and 2; two units 10 m and 6 m. From the edge of 45 m and of 30 m. */
    @ParameterizedTest
    @CsvSource({"four-unit-row, 45, 4, D 37.5 C 46.5 B 55.5 A 64.5", "four-unit-row, 30, 2, D 25 C 31 B 37 A 43",
        "two-unit-row, 30, 2, B 25 A 31"})
    void placesOfTheFigure(String family, double widthM, double code, String wanted) {
        Siting siting = site(family, runway().set(Input.RUNWAY_WIDTH, widthM).set(Input.CODE, code));
        String[] words = wanted.split(" ");
        for (int i = 0; i < words.length; i += 2) {
            assertEquals(-Double.parseDouble(words[i + 1]), unit(siting, words[i]).place().rightM(), 1e-9, words[i]);
        }
    }

    /**
     * Fig 5-19 a) with 6.63 m from eye to wheel: 9 m desired make 15.63 m. On B - 2' = 2 deg 48': 15.63 / 0.0489082 = 319.58 m; the minimum
     * of 5 m: 11.63 / 0.0489082 = 237.79 m. Two units on A - 2' = 2 deg 43': 15.63 / 0.0474500 = 329.40 m.
     */
    @ParameterizedTest
    @CsvSource({"four-unit-row, DESIRED, 319.578", "four-unit-row, MINIMUM, 237.792", "two-unit-row, DESIRED, 329.397"})
    void distancesByHand(String family, SitingRequest.Clearance clearance, double distanceM) {
        SitingRequest.Builder request = runway().set(Input.EYE_HEIGHT, null).set(Input.EYE_TO_WHEEL, 6.63).clearance(clearance);
        assertEquals(distanceM, site(family, family.startsWith("two") ? request.set(Input.CODE, 2.0) : request).distanceM(), 0.005);
    }

    /** Fig 5-19 b): 300 m from origin to threshold, and the mean of 1 m and 3 m, 2 m x cot 3 deg = 38.16 m. */
    @Test
    void theDistanceBesideAGlidePathByHand() {
        SitingRequest.Builder request = runway().set(Input.EYE_HEIGHT, null).set(Input.EYE_TO_WHEEL, 6.63)
                .set(Input.GLIDE_PATH_ORIGIN, 300.0).set(Input.EYE_TO_ANTENNA_MIN, 1.0).set(Input.EYE_TO_ANTENNA_MAX, 3.0)
                .approach(Approach.INSTRUMENT);
        assertEquals(338.162, site("four-unit-row", request).distanceM(), 0.005);
    }

    /** Table 5-3: A - 0.57 of 2 deg 30', two units A - 0.9 of 2 deg 45', T form 1.9. */
    @ParameterizedTest
    @CsvSource({"four-unit-row, 3, 1.93", "two-unit-row, 2, 1.85", "t-form, 3, 1.9"})
    void slopesOfTheSurface(String family, double code, double slopeDeg) {
        assertEquals(slopeDeg, site(family, runway().set(Input.CODE, code)).surface().orElseThrow().slopeDeg(), 1e-9);
    }
}
