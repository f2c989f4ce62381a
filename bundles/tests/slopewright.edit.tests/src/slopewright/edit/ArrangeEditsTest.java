package slopewright.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;

import org.junit.jupiter.api.Test;

import slopewright.model.AidSide;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.siting.Side;

/** Edits that arrange light units, through the cycle of execute, undo and redo. The expected places are plain arithmetic. */
class ArrangeEditsTest {

    private final Sample sample = new Sample();

    private ApproachAid aid() {
        return sample.end.getAids().get(0);
    }

    private LightUnit unit(int index) {
        return aid().getUnits().get(index);
    }

    private List<Double> rights() {
        return aid().getUnits().stream().map(LightUnit::getRightM).toList();
    }

    private List<Double> alongs() {
        return aid().getUnits().stream().map(LightUnit::getAlongM).toList();
    }

    /** A row whose units stand at 300, 301, 299 and 302 m along, and at 15, 23, 34 and 42 m to the left. */
    private void unevenRow() {
        sample.withRow();
        double[] along = {300, 301, 299, 302};
        double[] right = {-15, -23, -34, -42};
        for (int i = 0; i < along.length; i++) {
            unit(i).setAlongM(along[i]);
            unit(i).setRightM(right[i]);
        }
    }

    @Test
    void unitsComeOntoTheBarLineOfTheOneThatLeads() {
        unevenRow();
        EditHarness.cycle(sample.project, AlignUnits.onBar(aid().getUnits(), unit(1)),
                () -> assertEquals(List.of(301.0, 301.0, 301.0, 301.0), alongs()));
        assertEquals(List.of(-15.0, -23.0, -34.0, -42.0), rights());
    }

    /** The ground rises by one metre in a hundred: a unit that goes one metre back stands one centimetre lower. */
    @Test
    void lensesFollowTheGroundWhenUnitsAreAligned() {
        sample.withProfile();
        unevenRow();
        unit(3).setLensElevationM(54.0);
        EditHarness.cycle(sample.project, AlignUnits.onBar(aid().getUnits(), unit(1)),
                () -> assertEquals(53.99, unit(3).getLensElevationM(), 1e-9));
    }

    @Test
    void unitsComeToTheSameOffsetEachOnItsSide() {
        unevenRow();
        unit(3).setRightM(42.0);
        EditHarness.cycle(sample.project, AlignUnits.atOffset(List.of(unit(0), unit(2), unit(3)), unit(0)),
                () -> assertEquals(List.of(-15.0, -23.0, -15.0, 15.0), rights()));
    }

    @Test
    void oneUnitAloneCanNotBeAligned() {
        unevenRow();
        EditHarness.fails(sample.project, EditException.class, AlignUnits.onBar(List.of(unit(0)), unit(0)), "two units");
        unit(0).setAlongM(null);
        EditHarness.fails(sample.project, EditException.class, AlignUnits.onBar(aid().getUnits(), unit(0)), "not known");
    }

    /** From 15 to 42 m are three equal steps of 9 m. */
    @Test
    void unitsAreSpacedEquallyBetweenTheOutermost() {
        unevenRow();
        EditHarness.cycle(sample.project, DistributeUnits.across(aid().getUnits()),
                () -> assertEquals(List.of(-15.0, -24.0, -33.0, -42.0), rights()));
        assertEquals(List.of(300.0, 301.0, 299.0, 302.0), alongs());
        EditHarness.fails(sample.project, EditException.class, DistributeUnits.across(List.of(unit(0), unit(1))), "three units");
    }

    /** On both sides each row is spaced for itself: -42, -30, -15 has its middle at -28.5. */
    @Test
    void theSidesAreSpacedEachForItself() {
        unevenRow();
        unit(1).setRightM(-30.0);
        unit(2).setRightM(20.0);
        EditHarness.cycle(sample.project, DistributeUnits.across(aid().getUnits()),
                () -> assertEquals(List.of(-15.0, -28.5, 20.0, -42.0), rights()));
    }

    @Test
    void anAidOnBothSidesStaysSymmetricalWhenItIsMovedAcross() {
        AddAid.solve(sample.end, "four-unit-row", Sample.ICAO, Side.BOTH).execute();
        assertEquals(AidSide.BOTH, aid().getSide());
        List<Double> before = rights();
        assertTrue(before.stream().anyMatch(right -> right < 0) && before.stream().anyMatch(right -> right > 0), before.toString());
        EditHarness.cycle(sample.project, MoveAid.by(aid(), 2, -1.5, true), () -> assertEquals(
                before.stream().map(right -> right < 0 ? right - 1.5 : right + 1.5).toList(), rights()));
        List<Double> after = rights();
        EditHarness.cycle(sample.project, MoveAid.by(aid(), 0, -1.5, false), () -> assertEquals(
                after.stream().map(right -> right < 0 ? right + 1.5 : right - 1.5).toList(), rights(), "taken by the right side"));
        double sum = rights().stream().mapToDouble(Double::doubleValue).sum();
        assertEquals(0, sum, 1e-9, "the one side is the mirror of the other");
    }
}
