package slopewright.evaluation.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.evaluation.TrialSite;
import slopewright.messages.Message;
import slopewright.model.EquipmentType;
import slopewright.model.ProfilePoint;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;

/**
 * Families as proposals. By hand: on 3 degrees a row's lowest on-slope signal is 2 deg 48 min, for an eye height of 15 m over a level
 * threshold it stands 15 / tan 2.8 = 306.708 m in; its surface starts 60 m before the threshold and rises 1.93 degrees.
 */
class FamilyComparisonTest {
    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;
    private static final double TAN = Math.tan(Math.toRadians(1.93));

    private final TrialSite site = TrialSite.runway("four-unit-row");

    private Candidate candidate(String family) {
        return FamilyComparison.of(ProjectEvaluation.of(site.project(), Optional.of("icao:5th")), site.host()).stream()
                .filter(found -> found.family().key().equals(family)).findFirst().orElseThrow();
    }

    private static List<String> keys(List<Message> messages) {
        return messages.stream().map(Message::key).toList();
    }

    /** Figure for figure: what the rule set lays out is what stands, so that both evaluations say the same. */
    @Test
    void aProposalOfTheStandingFamilyAgreesWithTheStandingAid() {
        site.mast("mast", -1060, 0, 30);
        site.laidOut("icao:5th");
        Candidate row = candidate("four-unit-row");
        AidEvaluation standing = row.standing().orElseThrow();
        assertEquals(15 / Math.tan(Math.toRadians(2.8)), row.siting().orElseThrow().distanceM(), 1e-3);
        assertEquals(1000 * TAN - 30, row.obstacleMarginM().orElseThrow(), 1e-3);
        assertEquals(standing.siting().orThrow().distanceM(), row.siting().orElseThrow().distanceM(), 0);
        assertEquals(standing.siting().orThrow().mehtM(), row.siting().orElseThrow().mehtM(), 0);
        assertEquals(standing.marginM(), row.obstacleMarginM());
        assertTrue(row.fits(), row.reasons().toString());
    }

    /** An aid that was moved 10 m in stands beside its proposal: the one 316.708 m, the other 306.708 m in. */
    @Test
    void whatStandsIsShownBesideWhatIsProposed() {
        site.laidOut("icao:5th");
        site.aid().getUnits().forEach(unit -> unit.setAlongM(unit.getAlongM() + 10));
        Candidate row = candidate("four-unit-row");
        assertEquals(15 / Math.tan(Math.toRadians(2.8)), row.siting().orElseThrow().distanceM(), 1e-3);
        assertEquals(15 / Math.tan(Math.toRadians(2.8)) + 10, row.standing().orElseThrow().siting().orThrow().distanceM(), 1e-3);
    }

    /** Lenses 0.5 m up as the units there are, no ground measured: (15 - 0.5) / tan 2.8 = 296.484 m. */
    @Test
    void lensesStandAsHighAsThoseThatStandThere() {
        site.laidOut("icao:5th");
        site.aid().getUnits().forEach(unit -> unit.setLensElevationM(TrialSite.DATUM_M + 0.5));
        Candidate row = candidate("four-unit-row");
        assertEquals(14.5 / Math.tan(Math.toRadians(2.8)), row.siting().orElseThrow().distanceM(), 1e-3);
        assertTrue(keys(row.remarks()).contains("proposal.lens-over-threshold"), row.remarks().toString());
        Candidate panels = candidate("two-bar");
        assertTrue(keys(panels.remarks()).contains("proposal.lens-over-threshold"), "another family stands as high");
    }

    /** Ground 1 m below the threshold from 200 m to 400 m, equipment 0.6 m high: 0.4 m below, 15.4 / tan 2.8 = 314.887 m. */
    @Test
    void theGroundThatIsThereCounts() {
        EquipmentType type = MAKE.createEquipmentType();
        type.setName("set");
        type.setFamilyKey("four-unit-row");
        type.setHeightAboveGroundM(0.6);
        site.aerodrome().getEquipmentTypes().add(type);
        site.aid().setEquipment(type);
        for (double[] at : new double[][] {{0, 0}, {200, -1}, {400, -1}}) {
            ProfilePoint point = MAKE.createProfilePoint();
            point.setChainageM(at[0]);
            point.setElevationM(TrialSite.DATUM_M + at[1]);
            ((RunwayEnd) site.host()).getSiteProfile().add(point);
        }
        Candidate row = candidate("four-unit-row");
        assertEquals(15.4 / Math.tan(Math.toRadians(2.8)), row.siting().orElseThrow().distanceM(), 1e-3);
        assertTrue(keys(row.remarks()).containsAll(List.of("proposal.lens-of-equipment", "proposal.ground-measured")),
                row.remarks().toString());
    }

    /** A top 2 m above 1000 tan 1.93 = 33.697 m: whatever else is good, it does not fit. */
    @Test
    void nothingFitsUnderAnObstacle() {
        site.mast("mast", -1060, 0, 1000 * TAN + 2);
        Candidate row = candidate("four-unit-row");
        assertEquals(-2, row.obstacleMarginM().orElseThrow(), 1e-3);
        assertEquals(Candidate.Fit.DOES_NOT_FIT, row.fit());
        assertEquals(List.of("mast stands 2.00 m through its obstacle surface."), row.objections().stream().map(Message::english).toList());
    }

    @Test
    void surveyPointsCountAsObstaclesDo(@TempDir Path folder) {
        site.block(folder, "trees", new double[] {-1060, 0, 1000 * TAN + 2});
        assertEquals("trees, point 1", candidate("four-unit-row").governingObstacle());
        assertFalse(candidate("four-unit-row").fits());
    }

    @Test
    void whatNobodyKnowsIsToClearUp() {
        assertEquals(List.of("comparison.no-survey"), keys(candidate("four-unit-row").open()));
        site.mast("mast", -1060, 0, 10);
        assertTrue(candidate("four-unit-row").fits());
        site.unknownTop("tree", -2000);
        assertEquals(List.of("comparison.uncompared"), keys(candidate("four-unit-row").open()));
        assertFalse(candidate("four-unit-row").fits());
        assertEquals(1000 * TAN - 10, candidate("four-unit-row").obstacleMarginM().orElseThrow(), 1e-3);
    }

    /** 15 m less 7 m leave 8 m, the table asks for at least 5 m (group of 5 to 8 m); less 10.5 m 4.5 m where 6 m are asked for. */
    @Test
    void wheelsMustClearTheThreshold() {
        site.mast("mast", -1060, 0, 10);
        site.aeroplane("medium", 7);
        assertTrue(candidate("four-unit-row").fits(), candidate("four-unit-row").reasons().toString());
        site.aeroplane("large", 10.5);
        assertEquals(List.of("Wheels of large clear the threshold by 4.50 m, less than the minimum of 6.00 m."),
                candidate("four-unit-row").objections().stream().map(Message::english).toList());
        site.aeroplane("unknown", 0).setEyeToWheelM(null);
        assertTrue(keys(candidate("four-unit-row").open()).contains("comparison.wheels-unknown"));
    }

    /** A pair of units is kept for code numbers 1 and 2 (5.3.5.4). */
    @Test
    void aFamilyOfOtherCodesIsNotAllowed() {
        assertTrue(keys(candidate("two-unit-row").objections()).contains("comparison.forbidden"));
    }

    @Test
    void familiesOfOtherRuleSetsSaySo() {
        Candidate bars = candidate("two-bar");
        assertEquals("faa", bars.rules().key());
        assertTrue(keys(bars.remarks()).contains("comparison.other-rule-set"));
    }
}
