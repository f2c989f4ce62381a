package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static slopewright.siting.Trials.helipad;
import static slopewright.siting.Trials.rules;
import static slopewright.siting.Trials.runway;

import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.messages.Message;

/** What is asked for is either done or refused, never left aside in silence. */
class ReviewTest {

    private static String refusal(String family, String ruleSet, SitingRequest.Builder request) {
        return assertThrows(SitingException.class, () -> Families.site(family, request.build(), rules(ruleSet))).getMessage();
    }

    @ParameterizedTest
    @CsvSource({"eye-to-wheel-m, 0", "eye-to-wheel-m, -1", "reference-datum-height-m, 0", "glide-path-origin-m, -5"})
    void impossibleLengthsAtARunwayAreRefusedByName(String key, double value) {
        String message = refusal("four-unit-row", "icao:5th", runway().set(Input.of(key).orElseThrow(), value));
        assertTrue(message.contains("(" + key + ")"), message);
    }

    @ParameterizedTest
    @CsvSource({"hover-height-m, -1", "eye-above-skids-m, 0", "safety-area-width-m, 0", "fato-length-m, -25", "fato-least-length-m, 0"})
    void impossibleLengthsAtAHelipadAreRefusedByName(String key, double value) {
        String message = refusal("heliport-sector", "icao:5th", helipad().set(Input.of(key).orElseThrow(), value));
        assertTrue(message.contains("(" + key + ")"), message);
    }

    @Test
    void aClearanceThatPutsTheWheelsInTheGroundIsRefused() {
        SitingRequest.Builder request = runway().set(Input.EYE_HEIGHT, null).set(Input.EYE_TO_WHEEL, 5.0)
                .clearance(SitingRequest.Clearance.CHOSEN).set(Input.CHOSEN_CLEARANCE, -3.0);
        assertTrue(refusal("four-unit-row", "icao:5th", request).contains("(clearance-m)"));
    }

    @Test
    void barsGivenToAFamilyWithoutBarsAreRefused() {
        assertTrue(refusal("four-unit-row", "icao:5th", runway().bars(List.of(180.0, 390.0), List.of(2.5, 3.0))).contains("no bars"));
    }

    /** Table 5-2: 5 m up to 8 m of eye-to-wheel height, 9 m desired and 5 m at least; under 3 m, 6 m, 3 m and 1.5 m. */
    @ParameterizedTest
    @CsvSource({"5, 14, both", "5, 10, minimum", "5, 8, under", "2, 4, light"})
    void aClearanceThatFollowsFromAnEyeHeightIsJudged(double eyeToWheelM, double eyeHeightM, String verdict) {
        Siting siting = Families.site("four-unit-row",
                runway().set(Input.EYE_TO_WHEEL, eyeToWheelM).set(Input.EYE_HEIGHT, eyeHeightM).build(), rules("icao:5th"));
        assertTrue(Trials.hasNote(siting, "siting.note.clearance." + verdict), siting.notes().toString());
    }

    @Test
    void anEyeHeightBesideAGlidePathIsSaidNotToCount() {
        Siting siting = Families.site("four-unit-row", runway().set(Input.EYE_HEIGHT, 20.0).set(Input.GLIDE_PATH_ORIGIN, 290.0)
                .set(Input.EYE_TO_ANTENNA_MIN, 2.0).build(), rules("icao:5th"));
        assertEquals(20, Trials.number(Trials.note(siting, "siting.note.eye-height-not-used"), 0));
    }

    /** 5.3.5.45 c): the axis is turned by no more than 5 degrees. */
    @Test
    void aTurnBeyondTheLimitIsSaid() {
        Message note = Trials.note(Families.site("four-unit-row", runway().set(Input.AXIS_TURN, -5.5).build(), rules("icao:5th")),
                "siting.note.turn");
        assertEquals(5.5, Trials.number(note, 0));
        assertEquals(5, Trials.number(note, 1));
        assertFalse(Trials.hasNote(Families.site("four-unit-row", runway().set(Input.AXIS_TURN, 5.0).build(), rules("icao:5th")),
                "siting.note.turn"));
        assertTrue(refusal("four-unit-row", "icao:5th", runway().set(Input.AXIS_TURN, 90.0)).contains("(axis-turn-deg)"));
    }

    @Test
    void aSurfaceOfRunwaysIsNotPutAtAHelipad() {
        Siting siting = Families.site("four-unit-row", helipad().build(), rules("casa"));
        assertTrue(siting.surface().isEmpty());
        assertEquals("surface.none-at-helipads", siting.noSurface().orElseThrow().key());
        assertTrue(Families.site("heliport-pair", helipad().build(), rules("faa")).surface().isPresent());
    }
}
