package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Set;
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
        return seen.seen().stream().filter(unit -> unit.light().colour() == colour).count();
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

    /** Common practice, no source: pulsating white, steady white, steady red, pulsating red from high to very low. */
    @ParameterizedTest
    @CsvSource({"4, WHITE, true", "3, WHITE, false", "2.65, RED, false", "1, RED, true"})
    void thePulsatingLightPulsesAtBothEnds(double elevationDeg, Colour colour, boolean pulses) {
        Light light = from(site("pulsating", "faa:2010"), elevationDeg).seen().get(0).light();
        assertEquals(colour, light.colour());
        assertEquals(pulses, light.form() != LightForm.STEADY);
    }

    /**
     * Common practice, no source: 3, 4, 6, 12 and 16 units in bars, the smaller numbers on one side. The published texts (AIM 2-1-2 a)
     * know 2, 4 and 12 for two bars, 6 and 16 for three, and no 3.
     */
    @Test
    void barsComeInTheNumbersOfTheTrade() {
        assertEquals(Set.of(2, 4, 12), Set.copyOf(Families.get("two-bar").unitCounts()));
        assertEquals(Set.of(6, 16), Set.copyOf(Families.get("three-bar").unitCounts()));
        for (String[] layout : new String[][] {{"two-bar", "4", "1"}, {"two-bar", "12", "2"}, {"three-bar", "6", "1"},
                {"three-bar", "16", "2"}}) {
            int sides = Integer.parseInt(layout[2]);
            Siting siting = Families.site(layout[0], SitingRequest.builder().set(Input.SLOPE, 3.0).set(Input.RUNWAY_WIDTH, 45.0)
                    .set(Input.CODE, 4.0).set(Input.EYE_HEIGHT, 15.0).set(Input.UNITS, Double.valueOf(layout[1]))
                    .side(sides == 2 ? Side.BOTH : Side.LEFT).build(), RuleSets.find("faa:2010").orElseThrow());
            assertEquals(Integer.parseInt(layout[1]), siting.units().size(), layout[0]);
            assertEquals(sides, siting.units().stream().map(unit -> unit.place().rightM() > 0).distinct().count(), layout[0]);
        }
    }

    /**
     * Common practice, no source: two bars are seen from about 8 km by day and 32 km by night, and are clear of obstacles within 10 degrees
     * to about 7 km. The published text (AIM 2-1-2 a) prints 5 and 20 miles, that is 8.05 and 32.19 km, and 4 nautical miles, 7.41 km.
     */
    @Test
    void twoBarsAreSeenAndKeptClearAsFarAsTheTradeSays() {
        RuleSet rules = RuleSets.find("faa:2010").orElseThrow();
        assertEquals(8_000, rules.value("two-bar.range-day-m").value(), 50);
        assertEquals(32_000, rules.value("two-bar.range-night-m").value(), 200);
        SurfacePlan surface = site("two-bar", "faa:2010").surface().orElseThrow();
        assertEquals(10, surface.divergenceDeg().orElseThrow(), 1e-9);
        assertEquals(7_408, rules.value("two-bar.surface-length-m").value(), 1e-9);
        assertEquals(7_000, rules.value("two-bar.surface-length-m").value(), 500);
    }

    /**
     * Common practice, no source: the table of a portable unit runs from 80 to 140 kt at 400 and 1 000 ft/min. The slope is atan(descent /
     * (101.2686 x speed)): 400 / 8101.5 = 0.049374, 2.827 deg; 1000 / 8101.5, 7.037 deg; 400 / 14177.6, 1.616 deg; 1000 / 14177.6,
     * 4.035 deg.
     */
    @ParameterizedTest
    @CsvSource({"80, 400, 2.827", "80, 1000, 7.037", "140, 400, 1.616", "140, 1000, 4.035"})
    void theTableOfAPortableUnit(double speedKt, double descentFtMin, double slopeDeg) {
        Siting siting = Families.site("tri-colour", SitingRequest.builder().set(Input.GROUND_SPEED, speedKt)
                .set(Input.DESCENT, descentFtMin).set(Input.RUNWAY_WIDTH, 45.0).set(Input.CODE, 4.0).set(Input.EYE_HEIGHT, 15.0).build(),
                RuleSets.find("faa:2010").orElseThrow());
        assertEquals(slopeDeg, siting.slopeDeg(), 5e-4);
    }

    /** Common practice, no source: a portable unit's supply is 22 to 28 V; no text that was read prints one. */
    @Test
    void thePortableSupplyIsThatOfTheTrade() {
        RuleSet rules = RuleSets.find("faa:2010").orElseThrow();
        assertEquals(22, rules.value("portable.supply-from-v").value());
        assertEquals(28, rules.value("portable.supply-to-v").value());
        assertEquals("common-practice", rules.value("portable.supply-to-v").citation().provenance().key());
    }
}
