package slopewright.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static slopewright.siting.Trials.eye;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Profile;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/**
 * What every family owes under every rule set that covers it, found by enumeration: a new family is held to it without a change
 * here.
 */
class FamilyContractTest {

    private static final Set<String> NO_HELIPADS = Set.of("easa four-unit-row", "easa two-unit-row", "faa four-unit-row",
            "faa two-unit-row");

    /** One family under one rule set at a runway or a helipad. */
    record Case(IndicatorFamily family, RuleSet rules, boolean helipad) {

        SitingRequest.Builder request() {
            return helipad ? Trials.helipad() : Trials.runway();
        }

        Siting site(SitingRequest.Builder request) {
            return Families.site(family.key(), request.build(), rules);
        }

        /** Whether the eye height that is asked for is the one on the slope itself: at helipads, for T forms and for panels. */
        boolean isNominal() {
            return helipad || family.has(Trait.CHOSEN_EYE_HEIGHT) || family.has(Trait.PANELS);
        }

        /** The eye height that the request asks for. */
        double targetM() {
            return helipad ? 3.8 : 15;
        }

        @Override
        public String toString() {
            return rules.key() + ":" + rules.edition() + " " + family.key() + (helipad ? " at a helipad" : "");
        }
    }

    static Stream<Case> cases() {
        List<Case> cases = new ArrayList<>();
        for (RuleSet rules : RuleSets.all()) {
            for (IndicatorFamily family : Families.all()) {
                if (rules.covers(family.ruleKey()) && family.atRunways()) {
                    cases.add(new Case(family, rules, false));
                }
                if (rules.covers(family.ruleKey()) && family.atHelipads() && !NO_HELIPADS.contains(rules.key() + " " + family.key())) {
                    cases.add(new Case(family, rules, true));
                }
            }
        }
        return cases.stream();
    }

    static Stream<Case> runways() {
        return cases().filter(ruleCase -> !ruleCase.helipad());
    }

    @Test
    void everyFamilyHasItsOwnNames() {
        Set<String> keys = new HashSet<>();
        Set<String> names = new HashSet<>();
        for (IndicatorFamily family : Families.all()) {
            assertTrue(keys.add(family.key()), family.key());
            assertTrue(names.add(family.name()), family.name());
            assertFalse(family.unitCounts().isEmpty());
            assertTrue(family.atRunways() || family.atHelipads());
            assertTrue(RuleSets.all().stream().anyMatch(rules -> rules.covers(family.ruleKey())), "some rule set covers " + family.key());
        }
        assertEquals(11, keys.size());
        RuleSets.all().forEach(rules -> rules.descriptor().families().forEach(family -> assertTrue(keys.contains(family), family)));
    }

    @Test
    void aRuleSetThatDoesNotCoverAFamilySaysSo() {
        int refused = 0;
        for (RuleSet rules : RuleSets.all()) {
            for (IndicatorFamily family : Families.all()) {
                if (!rules.covers(family.ruleKey())) {
                    SitingRequest request = (family.atRunways() ? Trials.runway() : Trials.helipad()).build();
                    String message = assertThrows(SitingException.class, () -> Families.site(family.key(), request, rules)).getMessage();
                    assertTrue(message.contains("does not cover"), message);
                    assertTrue(message.contains(rules.key().toUpperCase(Locale.ROOT)) && message.contains(family.name()), message);
                    refused++;
                }
            }
        }
        assertTrue(refused > 20);
    }

    /** The forward formula: distance x tan of the angle + lens is the eye height that was asked for. */
    @ParameterizedTest
    @MethodSource("cases")
    void theSolutionGivesItsTargetBack(Case one) {
        Profile bumpy = Profile.of(new double[] {-500, 0, 120, 300, 420, 2000}, new double[] {0, 0, 0.4, -0.7, 0.3, -2});
        List<SitingRequest.Builder> grounds = List.of(one.request(), one.request().set(Input.LENS_HEIGHT, 0.9),
                one.request().set(Input.GROUND_SLOPE, -0.8).set(Input.LENS_ABOVE_GROUND, 0.4), one.request().set(Input.GROUND_SLOPE, 1.1),
                one.request().ground(bumpy));
        for (SitingRequest.Builder ground : grounds) {
            Siting siting = one.site(ground);
            double angle = one.isNominal() ? siting.slopeDeg() : siting.lowestOnSlopeDeg();
            double forward = siting.reference().alongM() * Angles.tanDeg(angle) + siting.reference().heightM();
            assertEquals(one.targetM(), forward, 1e-9);
            assertEquals(one.targetM(), one.isNominal() ? siting.nominalEyeHeightM().orElseThrow() : siting.mehtM(), 1e-9);
            assertEquals(siting.distanceM(), siting.reference().alongM(), 1e-9);
        }
    }

    /** A layout laid at the solved distance is the solved layout. */
    @ParameterizedTest
    @MethodSource("cases")
    void aGivenDistanceLaysTheSameUnits(Case one) {
        Siting solved = one.site(one.request());
        Siting given = one.site(one.request().set(Input.DISTANCE, solved.distanceM()));
        assertEquals(solved.units().size(), given.units().size());
        for (int i = 0; i < solved.units().size(); i++) {
            UnitPlan first = solved.units().get(i);
            UnitPlan second = given.units().get(i);
            assertEquals(first.id(), second.id());
            assertEquals(first.settingDeg(), second.settingDeg(), 1e-9);
            assertEquals(0, first.place().planDistanceM(second.place()), 1e-9);
            assertEquals(first.place().heightM(), second.place().heightM(), 1e-9);
        }
        assertEquals(solved.mehtM(), given.mehtM(), 1e-9);
        assertEquals(solved.nominalEyeHeightM().isPresent(), given.nominalEyeHeightM().isPresent());
        solved.nominalEyeHeightM().ifPresent(height -> assertEquals(height, given.nominalEyeHeightM().orElseThrow(), 1e-9));
    }

    /** Assessed as it stands, a solved layout gives what was solved. */
    @ParameterizedTest
    @MethodSource("cases")
    void aSolvedLayoutIsAssessedAsSolved(Case one) {
        for (SitingRequest.Builder builder : List.of(one.request(), one.request().set(Input.GROUND_SLOPE, 0.6))) {
            Siting solved = one.site(builder);
            Siting assessed = one.family().assess(builder.build(), one.rules(), solved.units(), solved.unshifted());
            assertEquals(solved.distanceM(), assessed.distanceM(), 1e-9);
            assertEquals(solved.lowestOnSlopeDeg(), assessed.lowestOnSlopeDeg(), 1e-9);
            assertEquals(solved.mehtM(), assessed.mehtM(), 1e-9);
            assertEquals(solved.nominalEyeHeightM().isPresent(), assessed.nominalEyeHeightM().isPresent());
            solved.nominalEyeHeightM().ifPresent(height -> assertEquals(height, assessed.nominalEyeHeightM().orElseThrow(), 1e-9));
            assertEquals(solved.surface().isPresent(), assessed.surface().isPresent());
            solved.surface().ifPresent(plan -> {
                SurfacePlan again = assessed.surface().orElseThrow();
                assertEquals(plan.slopeDeg(), again.slopeDeg(), 1e-9);
                assertEquals(plan.startAlongM(), again.startAlongM(), 1e-9);
                assertEquals(plan.startHeightM(), again.startHeightM(), 1e-9);
                assertEquals(plan.lengthM(), again.lengthM(), 1e-9);
            });
        }
    }

    /** No gap, no overlap: at every elevation a unit shows just the light of the one sector that holds it. */
    @ParameterizedTest
    @MethodSource("cases")
    void theSectorsOfEachUnitArePartition(Case one) {
        for (UnitPlan unit : one.site(one.request()).units()) {
            List<SectorEdge> edges = unit.edges();
            assertEquals(one.family().displayForm() == IndicatorFamily.DisplayForm.PANELS, edges.isEmpty());
            for (SectorEdge edge : edges) {
                assertNotEquals(edge.below(), edge.above(), "an edge that nobody sees");
                assertEquals(edge.below(), unit.lightAt(edge.angleDeg() - 1e-6));
                assertEquals(edge.above(), unit.lightAt(edge.angleDeg() + 1e-6));
            }
            for (double elevation = -5; elevation < 30; elevation += 0.0137) {
                Set<Light> shown = new HashSet<>();
                for (int sector = 0; sector <= edges.size() && !edges.isEmpty(); sector++) {
                    double from = sector == 0 ? -90 : edges.get(sector - 1).angleDeg();
                    double to = sector == edges.size() ? 90 : edges.get(sector).angleDeg();
                    if (elevation > from && elevation <= to) {
                        shown.add(sector == 0 ? edges.get(0).below() : edges.get(sector - 1).above());
                    }
                }
                assertEquals(edges.isEmpty() ? Set.of(Light.DARK) : Set.of(unit.lightAt(elevation)), edges.isEmpty()
                        ? Set.of(unit.lightAt(elevation)) : shown);
            }
        }
    }

    /** Rising, an eye never reads a lower meaning than before, on any path, near or far. */
    @ParameterizedTest
    @MethodSource("cases")
    void theMeaningRisesWithTheEye(Case one) {
        Siting siting = one.site(one.request());
        double nearest = siting.units().stream().mapToDouble(unit -> unit.place().alongM()).min().orElseThrow();
        for (double before : new double[] {40, 300, 1500, 8000, 20000}) {
            Map<String, Meaning> last = new LinkedHashMap<>();
            Set<Meaning> met = new HashSet<>();
            double range = siting.reference().alongM() - nearest + before;
            for (double elevation = -1; elevation < 12; elevation += 0.005) {
                Observation seen = Signals.observe(siting, eye(siting, range, elevation));
                for (Map.Entry<String, Meaning> path : seen.meanings().entrySet()) {
                    Meaning previous = last.put(path.getKey(), path.getValue());
                    met.add(path.getValue());
                    if (previous == Meaning.OUTSIDE) {
                        assertEquals(Meaning.OUTSIDE, path.getValue(), "beams end upward only");
                    } else if (previous != null && path.getValue() != Meaning.OUTSIDE) {
                        assertTrue(path.getValue().ordinal() <= previous.ordinal(),
                                before + " m before the units at " + elevation + " degrees " + previous + " turns to " + path.getValue());
                    }
                }
            }
            boolean ends = one.family().key().startsWith("t-form");
            assertEquals(ends, met.contains(Meaning.OUTSIDE), "only the T form has beams that end, at 6 degrees (5.3.5.11)");
            boolean panels = one.family().displayForm() == IndicatorFamily.DisplayForm.PANELS;
            if (before >= 300 && (!panels || before < 2000)) {
                assertTrue(met.contains(Meaning.ON_SLOPE), "on the slope");
                assertTrue(met.contains(Meaning.ABOVE) || met.contains(Meaning.WELL_ABOVE), "above");
                assertTrue(met.contains(Meaning.BELOW) || met.contains(Meaning.WELL_BELOW), "below");
            }
        }
    }

    @ParameterizedTest
    @MethodSource("cases")
    void onTheSlopeTheSignalIsOnSlope(Case one) {
        Siting siting = one.site(one.request());
        for (double distance : new double[] {250, 700, 2000, 9000}) {
            Observation seen = Signals.observe(siting, eye(siting, distance, siting.slopeDeg()));
            assertEquals(Meaning.ON_SLOPE, seen.meaning(), distance + " m out");
        }
    }

    /** What stands on the right is the mirror of what stands on the left, and is read alike. */
    @ParameterizedTest
    @MethodSource("runways")
    void theRightMirrorsTheLeft(Case one) {
        if ("t-form".equals(one.family().key())) {
            assertBothSidesAlike(one.site(one.request()));
            return;
        }
        Siting left = one.site(one.request().side(Side.LEFT));
        Siting right = one.site(one.request().side(Side.RIGHT));
        for (UnitPlan unit : left.units()) {
            UnitPlan other = Trials.unit(right, unit.id());
            assertEquals(unit.mirrored(), other);
            assertTrue(unit.place().rightM() < 0);
        }
        FramePoint eye = new FramePoint(-1200, 150, 70);
        FramePoint mirroredEye = new FramePoint(-1200, -150, 70);
        assertEquals(Signals.observe(left, eye).seen().stream().map(SeenUnit::light).toList(),
                Signals.observe(right, mirroredEye).seen().stream().map(SeenUnit::light).toList());
        assertEquals(Signals.observe(left, eye).meanings(), Signals.observe(right, mirroredEye).meanings());
        assertEquals(left.surface().map(SurfacePlan::slopeDeg), right.surface().map(SurfacePlan::slopeDeg));
    }

    private static void assertBothSidesAlike(Siting siting) {
        for (UnitPlan unit : siting.units()) {
            if (unit.id().endsWith("-left")) {
                UnitPlan other = Trials.unit(siting, unit.id().replace("-left", "-right"));
                assertEquals(unit.mirrored(), other.named(unit.id()));
            }
        }
        assertEquals(0, siting.units().stream().mapToDouble(unit -> unit.place().rightM()).sum(), 1e-9);
    }

    @Test
    void rowsAndBarsOnBothSidesAreMirrored() {
        for (String family : List.of("four-unit-row", "two-unit-row")) {
            assertBothSidesAlike(Families.site(family, Trials.runway().side(Side.BOTH).build(), Trials.rules("icao:5th")));
        }
        assertBothSidesAlike(Families.site("two-bar", Trials.runway().set(Input.UNITS, 12.0).build(), Trials.rules("faa")));
        assertEquals(12, Families.site("two-bar", Trials.runway().set(Input.UNITS, 12.0).build(), Trials.rules("faa")).units().size());
    }

    /** Near bar first, left before right, from the runway outward; as many units as the family comes in; names are unique. */
    @ParameterizedTest
    @MethodSource("cases")
    void theUnitsAreInOrderOfReading(Case one) {
        Siting siting = one.site(one.request());
        assertEquals(Signals.inOrder(siting.units()), siting.units());
        assertEquals(one.family().unitCounts().get(0), siting.units().size());
        assertEquals(siting.units().size(), siting.units().stream().map(UnitPlan::id).distinct().count());
        for (int i = 1; i < siting.units().size(); i++) {
            UnitPlan before = siting.units().get(i - 1);
            UnitPlan after = siting.units().get(i);
            assertTrue(after.bar() >= before.bar());
            if (after.bar() == before.bar() && after.place().rightM() * before.place().rightM() > 0) {
                assertTrue(Math.abs(after.place().rightM()) >= Math.abs(before.place().rightM()));
            }
        }
    }

    /** Every number has a place where it comes from, and what is missing is said. */
    @ParameterizedTest
    @MethodSource("cases")
    void everySitingNamesItsSources(Case one) {
        Siting siting = one.site(one.request());
        assertFalse(siting.citations().isEmpty());
        siting.citations().forEach(use -> assertFalse(use.citation().text().isBlank(), use.name()));
        assertNotEquals(siting.surface().isPresent(), siting.noSurface().isPresent(), "a surface, or the reason why there is none");
        siting.surface().ifPresent(surface -> assertTrue(surface.slopeDeg() < siting.lowestOnSlopeDeg(), "objects stay under the signals"));
        assertEquals(one.rules().key(), siting.ruleSet());
        assertEquals(one.rules().edition(), siting.edition());
        assertEquals(one.family().key(), siting.family());
    }

    /** Two sitings of one request are equal to the last bit. */
    @ParameterizedTest
    @MethodSource("cases")
    void theSameRequestGivesTheSameSiting(Case one) {
        Siting first = one.site(one.request());
        Siting second = one.site(one.request());
        assertEquals(first, second);
    }
}
