package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static slopewright.siting.Trials.helipad;
import static slopewright.siting.Trials.note;
import static slopewright.siting.Trials.number;
import static slopewright.siting.Trials.rules;
import static slopewright.siting.Trials.runway;

import java.util.Arrays;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import slopewright.geometry.Profile;
import slopewright.messages.Message;

/** Missing inputs are named, bad ones refused with the reason. */
class InputsTest {

    @ParameterizedTest
    @CsvFileSource(resources = "/cases/missing.csv")
    void missingInputsAreNamed(String family, String ruleSet, String place, String takenAway, String named) {
        SitingRequest.Builder request = "helipad".equals(place) ? helipad() : runway();
        request.set(Input.of(takenAway).orElseThrow(), null);
        if ("hover-height-m".equals(takenAway)) {
            request.set(Input.SAFETY_AREA_WIDTH, 30.0);
        }
        String message = refusal(family, ruleSet, request);
        for (String key : named.split("\\|")) {
            assertTrue(message.contains("(" + key + ")"), message);
        }
    }

    @Test
    void theMissingInputsCanBeAskedFor() {
        SitingException refused = assertThrows(SitingException.class,
                () -> Families.site("four-unit-row", runway().set(Input.EYE_HEIGHT, null).build(), rules("icao:5th")));
        assertEquals(List.of(Input.EYE_TO_WHEEL, Input.EYE_HEIGHT), refused.missing());
        assertEquals(List.of(), new SitingException(Message.of("siting.no-surface")).missing());
    }

    @Test
    void aChosenClearanceMustBeGiven() {
        SitingRequest.Builder request = runway().set(Input.EYE_HEIGHT, null).set(Input.EYE_TO_WHEEL, 6.0)
                .clearance(SitingRequest.Clearance.CHOSEN);
        assertTrue(refusal("four-unit-row", "icao:5th", request).contains("clearance-m"));
        Siting siting = Families.site("four-unit-row", request.set(Input.CHOSEN_CLEARANCE, 4.0).build(), rules("icao:5th"));
        assertEquals(10, siting.mehtM(), 1e-9);
        assertEquals(5, number(note(siting, "siting.note.clearance-under-minimum"), 2));
    }

    @Test
    void aGlidePathNeedsTheEyeToAntennaHeight() {
        String message = refusal("four-unit-row", "icao:5th", runway().set(Input.GLIDE_PATH_ORIGIN, 300.0));
        assertTrue(message.contains("eye-to-antenna-min-m") && message.contains("eye-to-antenna-max-m"), message);
    }

    /** Numbers out of range, each with a word that the message must hold. */
    @ParameterizedTest
    @CsvSource({"four-unit-row, icao, slope-deg, 0.4, slope-deg", "four-unit-row, icao, slope-deg, -3, slope-deg",
        "four-unit-row, icao, slope-deg, 25, slope-deg", "four-unit-row, icao, runway-width-m, 0, runway-width-m",
        "four-unit-row, icao, runway-width-m, -45, runway-width-m", "four-unit-row, icao, eye-height-m, 0, eye-height-m",
        "four-unit-row, icao, eye-height-m, -1, eye-height-m", "four-unit-row, icao, units, 3, units", "two-bar, faa, units, 6, units",
        "four-unit-row, icao, lens-height-m, 20, before the threshold", "four-unit-row, icao, distance-m, -20, before the threshold",
        "four-unit-row, icao, code, 0, code", "four-unit-row, icao, code, 5, code", "four-unit-row, icao, code, 2.5, code",
        "t-form, icao, eye-height-m, 10, fly-up unit", "tri-colour, faa, on-slope-sector-deg, 0, on-slope-sector-deg",
        "tri-colour, faa, on-slope-sector-deg, 6.5, on-slope-sector-deg", "two-bar, faa, units, 2.4, units"})
    void numbersOutOfRangeAreRefused(String family, String ruleSet, String input, double value, String word) {
        String message = assertThrows(SitingException.class, () -> Families.site(family,
                runway().set(Input.of(input).orElseThrow(), value).build(), rules(ruleSet))).getMessage();
        assertTrue(message.contains(word), message);
    }

    @ParameterizedTest
    @CsvSource({"14, outside the table", "-1, more than zero"})
    void anAeroplaneOutsideTheTableIsRefused(double eyeToWheelM, String word) {
        String message = refusal("four-unit-row", "icao:5th", runway().set(Input.EYE_HEIGHT, null).set(Input.EYE_TO_WHEEL, eyeToWheelM));
        assertTrue(message.contains(word), message);
    }

    @Test
    void heightGroupsAreTheUnitedStates() {
        SitingRequest.Builder fifth = runway().set(Input.EYE_HEIGHT, null).set(Input.HEIGHT_GROUP, 5.0);
        assertTrue(refusal("four-unit-row", "faa", fifth).contains("height group 5"));
        assertTrue(refusal("four-unit-row", "icao:5th", fifth.set(Input.HEIGHT_GROUP, 2.0)).contains("no height groups"));
        String noTable = refusal("four-unit-row", "faa", runway().set(Input.EYE_HEIGHT, null).set(Input.EYE_TO_WHEEL, 6.0));
        assertTrue(noTable.contains("no table of wheel clearances"), noTable);
    }

    @Test
    void theGreatestEyeToAntennaHeightIsNotTheSmaller() {
        String message = refusal("four-unit-row", "icao:5th", runway().set(Input.GLIDE_PATH_ORIGIN, 300.0)
                .set(Input.EYE_TO_ANTENNA_MIN, 3.0)
                .set(Input.EYE_TO_ANTENNA_MAX, 2.0));
        assertTrue(message.contains("eye-to-antenna-max-m"), message);
    }

    /** Two descriptions of one level contradict each other. */
    @Test
    void lensHeightAndGroundExcludeEachOther() {
        SitingRequest.Builder both = runway().set(Input.LENS_HEIGHT, 1.0).set(Input.GROUND_SLOPE, 0.5);
        assertTrue(refusal("four-unit-row", "icao:5th", both).contains("exclude each other"));
        Profile ground = Profile.of(new double[] {0, 900}, new double[] {0, 1});
        assertTrue(refusal("t-form", "icao:5th", runway().set(Input.LENS_HEIGHT, 1.0).ground(ground)).contains("exclude each other"));
    }

    @ParameterizedTest
    @EnumSource(Input.class)
    void whatIsNotFiniteIsRefusedByName(Input input) {
        for (double wild : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            String message = assertThrows(SitingException.class, () -> SitingRequest.builder().set(input, wild)).getMessage();
            assertTrue(message.contains(input.key()), message);
        }
        assertEquals(input, Input.of(input.key()).orElseThrow());
        assertEquals(1, Arrays.stream(Input.values()).filter(other -> other.key().equals(input.key())).count());
    }

    @Test
    void barsMustFitTheFamilyAndRise() {
        assertTrue(refusal("two-bar", "faa", runway().bars(List.of(200.0, 400.0, 600.0), List.of())).contains("2 bars"));
        assertTrue(refusal("three-bar", "faa", runway().bars(List.of(200.0, 400.0, 600.0), List.of(2.5, 3.0))).contains("3 bars"));
        assertTrue(refusal("two-bar", "faa", runway().bars(List.of(400.0, 200.0), List.of(2.5, 3.0))).contains("beyond"));
        assertTrue(refusal("two-bar", "faa", runway().bars(List.of(200.0, 400.0), List.of(3.0, 2.5))).contains("higher"));
    }

    @ParameterizedTest
    @CsvSource({"1.8", "2.84", "steep"})
    void theRedLimitMayOnlyBeRaisedUnderTheFlyUpUnits(String limit) {
        assertTrue(refusal("t-form", "icao:5th", runway().option("red-limit-deg", limit)).contains("red limit"));
    }

    @Test
    void sidesThatAFamilyDoesNotHaveAreRefused() {
        assertTrue(refusal("tri-colour", "faa", runway().side(Side.BOTH)).contains("one unit"));
        assertTrue(refusal("t-form", "icao:5th", runway().side(Side.RIGHT)).contains("t-form-abbreviated"));
        assertTrue(refusal("t-form-abbreviated", "icao:5th", runway().side(Side.BOTH)).contains("t-form"));
        assertTrue(refusal("four-unit-row", "icao:5th", runway().option("layout", "enlarged")).contains("enlarged"));
    }

    @Test
    void runwaysAndHelipadsAreToldApart() {
        assertTrue(refusal("two-bar", "faa", helipad()).contains("not for helipads"));
        assertTrue(refusal("heliport-pair", "faa", runway()).contains("for helipads"));
        assertTrue(refusal("four-unit-row", "easa", helipad()).contains("Width of the on-slope sector of a row"),
                "heliports were not read there");
    }

    @Test
    void unknownFamiliesAreListed() {
        String message = assertThrows(SitingException.class, () -> Families.get("five-unit-row")).getMessage();
        assertTrue(message.contains("five-unit-row") && message.contains("known are PAPI, APAPI")
                && message.contains("alignment of elements"), message);
        assertTrue(Families.find("").isEmpty());
    }

    @Test
    void aRequestIsCopiedWhole() {
        SitingRequest first = runway().approach(Approach.INSTRUMENT).clearance(SitingRequest.Clearance.MINIMUM).side(Side.RIGHT)
                .option("layout", "reduced")
                .settings(SitingRequest.Settings.STANDARD).bars(List.of(1.0, 2.0), List.of(2.5, 3.0)).build();
        SitingRequest second = first.toBuilder().build();
        for (Input input : Input.values()) {
            assertEquals(first.number(input), second.number(input));
        }
        assertEquals(first.approach(), second.approach());
        assertEquals(first.clearance(), second.clearance());
        assertEquals(first.settings(), second.settings());
        assertEquals(first.side(), second.side());
        assertEquals(first.option("layout"), second.option("layout"));
        assertEquals(first.barDistancesM(), second.barDistancesM());
        assertEquals(first.barSettingsDeg(), second.barSettingsDeg());
        assertTrue(second.toBuilder().option("layout", null).set(Input.SLOPE, null).build().number(Input.SLOPE).isEmpty());
    }

    private static String refusal(String family, String ruleSet, SitingRequest.Builder request) {
        return assertThrows(SitingException.class, () -> Families.site(family, request.build(), rules(ruleSet))).getMessage();
    }
}
