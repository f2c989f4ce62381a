package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import slopewright.geometry.FramePoint;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** Facts of the trade as further check values. Common practice, no source: each test says so where a rule set says otherwise. */
class TradeFactsTest {
    private static Siting site(String family, String ruleSet) {
        RuleSet rules = RuleSets.find(ruleSet).orElseThrow();
        return Families.site(family, SitingRequest.builder().set(Input.SLOPE, 3.0).set(Input.RUNWAY_WIDTH, 45.0).set(Input.CODE, 4.0)
                .set(Input.EYE_HEIGHT, 15.0).build(), rules);
    }

    private static Observation from(Siting siting, double elevationDeg) {
        FramePoint reference = siting.reference();
        double distance = 3000;
        return Signals.observe(siting, new FramePoint(reference.alongM() - distance, 0,
                reference.heightM() + distance * Math.tan(Math.toRadians(elevationDeg))));
    }

    private static long count(Observation seen, Colour colour) {
        return seen.seen().stream().filter(one -> one.light().colour() == colour).count();
    }

    /** Common practice, no source: 4 white, 3 white 1 red, 2 and 2, 1 white 3 red, 4 red from too high to too low. */
    @ParameterizedTest
    @CsvSource({"4, 4, WELL_ABOVE", "3.3, 3, ABOVE", "3, 2, ON_SLOPE", "2.7, 1, BELOW", "2, 0, WELL_BELOW"})
    void aRowOfFourIsReadByItsWhites(double elevationDeg, int whites, Meaning meaning) {
        for (String ruleSet : List.of("icao:9th", "icao:5th", "faa:2010")) {
            Observation seen = from(site("four-unit-row", ruleSet), elevationDeg);
            assertEquals(whites, count(seen, Colour.WHITE), ruleSet);
            assertEquals(4 - whites, count(seen, Colour.RED), ruleSet);
            assertEquals(meaning, seen.meaning(), ruleSet);
        }
    }

    /** Common practice, no source: white over white too high, red over white right, red over red too low; the far bar is the upper. */
    @ParameterizedTest
    @CsvSource({"4, WHITE, WHITE", "3, RED, WHITE", "2, RED, RED"})
    void twoBarsAreReadOneOverTheOther(double elevationDeg, Colour upper, Colour lower) {
        for (SeenUnit unit : from(site("two-bar", "faa:2010"), elevationDeg).seen()) {
            assertEquals(unit.unit().bar() == 1 ? lower : upper, unit.light().colour());
        }
    }

    /** Common practice, no source: ten units a side, four across and six along; the figure of the ninth edition says the same. */
    @Test
    void aTFormHasTenUnitsASide() {
        Siting siting = site("t-form", "icao:9th");
        List<UnitPlan> left = siting.units().stream().filter(unit -> unit.place().rightM() < 0).toList();
        assertEquals(20, siting.units().size());
        assertEquals(10, left.size());
        assertEquals(4, left.stream().filter(unit -> Math.abs(unit.place().alongM() - siting.reference().alongM()) < 1).count());
        assertEquals(7, left.stream().map(unit -> Math.round(unit.place().alongM())).collect(Collectors.toSet()).size());
    }

    /** Common practice, no source: amber above, green on, red below. */
    @ParameterizedTest
    @CsvSource({"5, AMBER", "3, GREEN", "1, RED"})
    void theThreeColoursStandInThisOrder(double elevationDeg, Colour colour) {
        assertEquals(colour, from(site("tri-colour", "faa:2010"), elevationDeg).seen().get(0).light().colour());
    }
}
