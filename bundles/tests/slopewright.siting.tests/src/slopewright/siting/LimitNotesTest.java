package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;

import org.junit.jupiter.api.Test;

import slopewright.messages.Message;
import slopewright.standards.RuleSets;

/** A layout that is solved outside what its rule set allows says so. */
class LimitNotesTest {

    private static List<String> notes(String family, String ruleSet, SitingRequest.Builder request) {
        return Families.site(family, request.build(), RuleSets.find(ruleSet).orElseThrow()).notes().stream().map(Message::key)
                .filter(key -> List.of("siting.note.setting-range", "siting.note.code", "siting.note.height-group").contains(key)).toList();
    }

    private static SitingRequest.Builder runway(double slopeDeg, double code) {
        return SitingRequest.builder().set(Input.SLOPE, slopeDeg).set(Input.RUNWAY_WIDTH, 45.0).set(Input.CODE, code)
                .set(Input.EYE_HEIGHT, 15.0);
    }

    /** Units are set from 1.5 to 4.5 degrees (Annex 14 Vol I, 9th ed., 5.3.5.34); D of a row stands 30 minutes over the slope. */
    @Test
    void settingsBeyondTheRangeAreSaid() {
        assertEquals(List.of(), notes("four-unit-row", "icao:9th", runway(4, 4)));
        assertEquals(List.of("siting.note.setting-range"), notes("four-unit-row", "icao:9th", runway(4.01, 4)));
    }

    /** Two units are for code 1 and 2 (Annex 14 Vol I, 5th ed., 5.3.5.4). */
    @Test
    void aFamilyThatIsNotForTheCodeIsSaid() {
        assertEquals(List.of(), notes("two-unit-row", "icao:9th", runway(3, 2)));
        assertEquals(List.of("siting.note.code"), notes("two-unit-row", "icao:9th", runway(3, 3)));
    }

    /** Group 3 crosses at 50 ft, 5 ft above and 15 ft below at most: 10.668 m to 16.764 m. */
    @Test
    void anEyeHeightBesideItsGroupIsSaid() {
        assertEquals(List.of(), notes("four-unit-row", "faa", runway(3, 4).set(Input.HEIGHT_GROUP, 3.0).set(Input.EYE_HEIGHT, 10.67)));
        assertEquals(List.of("siting.note.height-group"), notes("four-unit-row", "faa", runway(3, 4).set(Input.HEIGHT_GROUP, 3.0)
                .set(Input.EYE_HEIGHT, 10.66)));
    }
}
