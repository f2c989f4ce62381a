package slopewright.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import slopewright.evaluation.AidRequests;
import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.model.SettingsForm;
import slopewright.model.SlopewrightFactory;
import slopewright.model.SlopewrightPackage.Literals;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.siting.Side;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;

/** Edits of approach aids through the cycle of execute, undo and redo. */
class AidEditsTest {

    private final Sample sample = new Sample();

    private ApproachAid aid() {
        return sample.end.getAids().get(0);
    }

    private List<Double> along() {
        return aid().getUnits().stream().map(LightUnit::getAlongM).toList();
    }

    private List<Double> lenses() {
        return aid().getUnits().stream().map(LightUnit::getLensElevationM).toList();
    }

    @Test
    void addAidPlacesWhatTheRuleSetSolves() {
        AddAid edit = AddAid.solve(sample.end, "four-unit-row", Sample.ICAO, Side.LEFT);
        EditHarness.cycle(sample.project, edit, () -> {
            assertEquals(4, aid().getUnits().size());
            assertEquals(AidSide.LEFT, aid().getSide());
            assertEquals(3.0, aid().getSlopeDeg());
            assertTrue(aid().getUnits().stream().allMatch(unit -> unit.getRightM() < 0), "left of the runway");
            Siting solved = Families.site("four-unit-row", AidRequests.of(aid()), Sample.ICAO);
            assertEquals(solved.distanceM(), along().get(0), 0.0006);
        });
        assertTrue(edit.touched().contains(sample.end.getId()));
        assertTrue(edit.touched().contains(aid().getId()));
        assertTrue(edit.touched().containsAll(aid().getUnits().stream().map(LightUnit::getId).toList()));
    }

    @Test
    void everyFamilyThatFitsARunwayIsAddedOrRefusedCleanly() {
        int added = 0;
        for (IndicatorFamily family : Families.all()) {
            Sample site = new Sample();
            RecordedEdit edit = AddAid.solve(site.end, family.key(), Sample.ICAO, Side.RIGHT);
            String before = EditHarness.text(site.project);
            try {
                EditHarness.cycle(site.project, edit, () -> assertEquals(1, site.end.getAids().size()));
                added++;
            } catch (SitingException e) {
                assertEquals(before, EditHarness.text(site.project), family.key());
            }
        }
        assertTrue(added >= 2, "only " + added + " families could be placed");
    }

    @Test
    void addAidAtAGlidePathTakesTheWidenedSettings() {
        var path = SlopewrightFactory.eINSTANCE.createGlidePathAid();
        path.setPathAngleDeg(3.0);
        path.setReferenceDatumHeightM(15.0);
        sample.group.setEyeToAntennaM(2.0);
        EditHarness.cycle(sample.project, AddChild.of(sample.end, Literals.APPROACH_HOST__GLIDE_PATH, path),
                () -> assertEquals(path, sample.end.getGlidePath()));
        EditHarness.cycle(sample.project, AddAid.solve(sample.end, "four-unit-row", Sample.ICAO, Side.LEFT),
                () -> assertEquals(SettingsForm.GLIDE_PATH, aid().getSettings()));
    }

    @Test
    void aSitingThatFailsLeavesNothingBehind() {
        sample.end.setDesiredSlopeDeg(null);
        RecordedEdit edit = AddAid.solve(sample.end, "four-unit-row", Sample.ICAO, Side.LEFT);
        EditHarness.fails(sample.project, SitingException.class, edit, "slope");
        assertEquals(0, sample.end.getAids().size());
        assertThrows(SitingException.class, () -> AddAid.solve(sample.end, "no-such-family", Sample.ICAO, Side.LEFT));
    }

    @Test
    void moveAidMovesAllUnitsAndKeepsTheLensesWithoutAProfile() {
        sample.withRow();
        List<Double> before = along();
        List<Double> lenses = lenses();
        List<Double> right = aid().getUnits().stream().map(LightUnit::getRightM).toList();
        RecordedEdit edit = MoveAid.by(aid(), 12.5, -1.25);
        EditHarness.cycle(sample.project, edit, () -> {
            for (int i = 0; i < 4; i++) {
                assertEquals(before.get(i) + 12.5, along().get(i), 1e-9);
                assertEquals(right.get(i) - 1.25, aid().getUnits().get(i).getRightM(), 1e-9);
            }
            assertEquals(lenses, lenses());
        });
        assertEquals(4, edit.touched().size());
        assertEquals("Move aid", edit.label());
    }

    /** The profile rises one metre in a hundred, so 50 m further up the lenses rise by 0.5 m. */
    @Test
    void moveAidKeepsTheHeightAboveSurveyedGround() {
        sample.withProfile().withRow();
        List<Double> lenses = lenses();
        EditHarness.cycle(sample.project, MoveAid.by(aid(), 50, 0), () -> {
            for (int i = 0; i < 4; i++) {
                assertEquals(lenses.get(i) + 0.5, lenses().get(i), 1e-9);
            }
        });
    }

    /** The profile ends at 600 m with an elevation of 56 m; beyond it the last level goes on. */
    @Test
    void beyondTheProfileItsLastLevelGoesOn() {
        sample.withProfile().withRow();
        double from = along().get(0);
        double lens = lenses().get(0);
        EditHarness.cycle(sample.project, MoveAid.by(aid(), 700 - from, 0),
                () -> assertEquals(lens + 56 - (50 + from / 100), lenses().get(0), 0.0011));
    }

    @Test
    void moveUnitsMovesThoseAlone() {
        sample.withRow();
        LightUnit first = aid().getUnits().get(0);
        List<Double> before = along();
        RecordedEdit edit = MoveUnits.by(List.of(first), 0.0004, 2);
        EditHarness.cycle(sample.project, edit, () -> assertEquals(before, along(), "less than half a millimetre is no move"));
        assertEquals(java.util.Set.of(first.getId()), edit.touched());
        assertEquals("Move unit", edit.label());
        EditHarness.fails(sample.project, EditException.class, MoveUnits.by(aid().getUnits(), Double.NaN, 0), "finite");
    }

    @Test
    void setUnitSettingTurnsTheUnit() {
        sample.withRow();
        LightUnit unit = aid().getUnits().get(1);
        EditHarness.cycle(sample.project, SetUnitSetting.to(unit, 3.25), () -> assertEquals(3.25, unit.getSettingDeg()));
        assertThrows(EditException.class, () -> SetUnitSetting.to(unit, 90));
        assertThrows(EditException.class, () -> SetUnitSetting.to(unit, Double.NaN));
    }

    @Test
    void resolveAidReplacesTheUnitsAndKeepsTheirIds() {
        sample.withRow();
        List<String> ids = aid().getUnits().stream().map(LightUnit::getId).toList();
        List<Double> solved = along();
        aid().getUnits().get(0).setFrangible(true);
        MoveAid.by(aid(), 20, 5).execute();
        EditHarness.cycle(sample.project, ResolveAid.of(aid(), Sample.ICAO), () -> {
            assertEquals(solved, along());
            assertEquals(ids, aid().getUnits().stream().map(LightUnit::getId).toList());
            assertEquals(true, aid().getUnits().get(0).getFrangible());
        });
    }

    @Test
    void setRuleSettingsLeavesThePlaces() {
        sample.withRow();
        List<Double> settings = aid().getUnits().stream().map(LightUnit::getSettingDeg).toList();
        for (LightUnit unit : aid().getUnits()) {
            unit.setSettingDeg(unit.getSettingDeg() + 0.1);
        }
        MoveAid.by(aid(), 20, 5).execute();
        List<Double> moved = along();
        EditHarness.cycle(sample.project, SetRuleSettings.of(aid(), Sample.ICAO), () -> {
            assertEquals(settings, aid().getUnits().stream().map(LightUnit::getSettingDeg).toList());
            assertEquals(moved, along());
        });
        aid().getUnits().get(3).setLabel("other");
        EditHarness.fails(sample.project, EditException.class, SetRuleSettings.of(aid(), Sample.ICAO), "other");
    }

    @Test
    void removeAidTakesItOutOfItsCircuitsToo() {
        sample.withRow().withCircuit();
        ApproachAid aid = aid();
        RecordedEdit edit = RemoveAid.of(aid);
        EditHarness.cycle(sample.project, edit, () -> {
            assertEquals(0, sample.end.getAids().size());
            assertEquals(0, sample.aerodrome.getCircuits().get(0).getAids().size());
        });
        assertTrue(edit.touched().containsAll(aid.getUnits().stream().map(LightUnit::getId).toList()));
        assertNotNull(aid.getId());
        assertThrows(EditException.class, () -> RemoveAid.of(aid), "it is gone already");
    }
}
