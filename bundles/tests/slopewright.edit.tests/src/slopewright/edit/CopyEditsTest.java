package slopewright.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;

import slopewright.evaluation.AidRequests;
import slopewright.evaluation.Proposals;
import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.SlopewrightFactory;
import slopewright.model.util.Ids;
import slopewright.siting.Families;
import slopewright.siting.Side;
import slopewright.siting.SitingException;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** Copies and mirror images of aids, through the cycle of execute, undo and redo. */
class CopyEditsTest {

    private final Sample sample = new Sample();

    private ApproachAid aid() {
        return sample.end.getAids().get(0);
    }

    private static List<Double> rights(ApproachAid aid) {
        return aid.getUnits().stream().map(LightUnit::getRightM).toList();
    }

    private void row() {
        sample.withRow();
        aid().setName("Row 09");
        aid().setTargetEyeHeightM(14.0);
        aid().getUnits().get(0).setMeasured(SlopewrightFactory.eINSTANCE.createMeasuredUnit());
        aid().getInspections().add(SlopewrightFactory.eINSTANCE.createInspection());
        Ids.assign(sample.project);
    }

    @Test
    void theCopyIsLaidOutAnewForTheOtherEnd() {
        row();
        sample.other.setDesiredSlopeDeg(3.5);
        assertSame(sample.other, CopyAid.otherEnd(aid()).orElseThrow());
        CopyAid edit = CopyAid.solved(aid(), sample.other, Sample.ICAO);
        EditHarness.cycle(sample.project, edit, () -> {
            ApproachAid copy = sample.other.getAids().get(0);
            assertSame(copy, edit.made().orElseThrow());
            assertEquals("Row 27", copy.getName());
            assertEquals(3.5, copy.getSlopeDeg(), "the slope of its own end");
            assertEquals(14.0, copy.getTargetEyeHeightM(), "choices go with it");
            double solved = Families.site("four-unit-row", AidRequests.of(copy), Sample.ICAO).distanceM();
            assertEquals(solved, copy.getUnits().get(0).getAlongM(), 0.0006);
            assertNotEquals(aid().getUnits().get(0).getAlongM(), copy.getUnits().get(0).getAlongM());
            assertTrue(copy.getInspections().isEmpty());
            assertNotEquals(aid().getId(), copy.getId());
            assertFalse(copy.getUnits().stream().anyMatch(unit -> unit.getId() == null));
        });
        assertEquals("Copy aid to 27, laid out anew", edit.label());
    }

    /** The thresholds lie at 50 and 54 m, so the lenses of the copy lie 4 m higher. */
    @Test
    void theSameGeometryKeepsDistancesAndHeightsAboveTheThreshold() {
        row();
        CopyAid edit = CopyAid.sameGeometry(aid(), sample.other);
        EditHarness.cycle(sample.project, edit, () -> {
            ApproachAid copy = sample.other.getAids().get(0);
            assertEquals(rights(aid()), rights(copy));
            for (int i = 0; i < 4; i++) {
                LightUnit from = aid().getUnits().get(i);
                LightUnit to = copy.getUnits().get(i);
                assertEquals(from.getAlongM(), to.getAlongM());
                assertEquals(from.getSettingDeg(), to.getSettingDeg());
                assertEquals(from.getLensElevationM() + 4, to.getLensElevationM(), 1e-9);
                assertNull(to.getMeasured());
                assertNotEquals(from.getId(), to.getId());
            }
            assertEquals(1, aid().getInspections().size(), "those of the original stay there");
        });
        assertEquals("Copy aid to 27, same geometry", edit.label());
    }

    @Test
    void whatCanNotBeCopiedIsRefusedWithTheReason() {
        row();
        EditHarness.fails(sample.project, EditException.class, CopyAid.sameGeometry(aid(), sample.end), "stands there already");
        sample.other.setThresholdElevationM(null);
        EditHarness.fails(sample.project, SitingException.class, CopyAid.sameGeometry(aid(), sample.other), "elevation");
        EditHarness.fails(sample.project, SitingException.class, CopyAid.solved(aid(), sample.other, Sample.ICAO), "elevation");
    }

    @Test
    void theMirrorImageStandsOnTheOtherSide() {
        row();
        aid().setAxisTurnDeg(1.5);
        aid().setBeamLeftLimitDeg(8.0);
        aid().setBeamRightLimitDeg(12.0);
        aid().getUnits().get(1).setAzimuthOffsetDeg(-0.5);
        List<Double> before = rights(aid());
        List<Double> alongs = aid().getUnits().stream().map(LightUnit::getAlongM).toList();
        EditHarness.cycle(sample.project, MirrorAid.of(aid()), () -> {
            assertEquals(AidSide.RIGHT, aid().getSide());
            assertEquals(before.stream().map(right -> -right).toList(), rights(aid()));
            assertEquals(alongs, aid().getUnits().stream().map(LightUnit::getAlongM).toList());
            assertEquals(-1.5, aid().getAxisTurnDeg());
            assertEquals(12.0, aid().getBeamLeftLimitDeg());
            assertEquals(8.0, aid().getBeamRightLimitDeg());
            assertEquals(0.5, aid().getUnits().get(1).getAzimuthOffsetDeg());
            assertNull(aid().getUnits().get(0).getMeasured());
        });
        MirrorAid.of(aid()).execute();
        assertEquals(before, rights(aid()), "twice mirrored it stands where it stood");
    }

    @Test
    void anAidOnBothSidesHasNoOtherSide() {
        row();
        aid().setSide(AidSide.BOTH);
        EditHarness.fails(sample.project, EditException.class, MirrorAid.of(aid()), "both sides");
        aid().setSide(AidSide.LEFT);
        aid().getUnits().clear();
        EditHarness.fails(sample.project, EditException.class, MirrorAid.of(aid()), "no units");
    }

    /** The heights of the groups of the rule set itself: the aeroplane of 7.0 m, 22.97 ft, needs the first group that reaches so far. */
    @Test
    void whereHeightGroupsCountTheLowestThatHoldsTheAeroplaneIsTaken() {
        RuleSet faa = RuleSets.find("faa").orElseThrow();
        int number = Proposals.usualHeightGroup(sample.end, faa).orElseThrow();
        assertTrue(faa.crossingHeight().orElseThrow().groups().stream().filter(group -> group.number() < number)
                .allMatch(group -> group.cockpitToWheelFt() < 22.97), "a lower group would hold it too");
        assertEquals(Optional.empty(), Proposals.usualHeightGroup(sample.end, Sample.ICAO), "wheel clearances count there");
        EditHarness.cycle(sample.project, AddAid.solve(sample.end, "two-bar", faa, Side.LEFT),
                () -> assertEquals(number, aid().getHeightGroup()));
    }
}
