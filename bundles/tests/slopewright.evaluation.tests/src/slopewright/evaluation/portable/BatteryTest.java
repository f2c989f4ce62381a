package slopewright.evaluation.portable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.EvaluationCache;
import slopewright.evaluation.TrialSite;
import slopewright.evaluation.circuit.CircuitLoad;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachDirection;
import slopewright.model.BrightnessLevel;
import slopewright.model.Circuit;
import slopewright.model.LightState;
import slopewright.model.SlopewrightFactory;
import slopewright.siting.SitingException;

/** How long a battery lasts at most: 55 Ah, and 100 W that draw 100 / 22 = 4.545 A at the lowest voltage, 12.1 h. */
class BatteryTest {

    private static BatteryEndurance battery(PortableSite site) {
        return PortableSetUp.of(AidEvaluation.of(site.aid, TrialSite.rules("faa"), new EvaluationCache()), LocalDate.of(2026, 7, 1))
                .battery().orElseThrow();
    }

    private static PortableSite lamp() {
        PortableSite site = new PortableSite();
        site.type.setLampPowerW(100.0);
        site.type.setLampsPerUnit(1);
        return site;
    }

    /** 80 % by age and 70 % in the cold leave 55 x 0.8 x 0.7 = 30.8 Ah: 12.1 x 0.56 = 6.776 h. */
    @Test
    void ageAndColdLeaveLess() {
        PortableSite site = lamp();
        Circuit circuit = site.battery(55.0, null);
        assertEquals(12.1, battery(site).leastHours(), 1e-9);
        circuit.setAgeLeftPercent(80.0);
        assertEquals(9.68, battery(site).leastHours(), 1e-9);
        assertTrue(battery(site).notes().stream().anyMatch(note -> note.english().contains("cold and the rate")), "the cold is missing");
        circuit.setColdLeftPercent(70.0);
        assertEquals(30.8, battery(site).usableAh(), 1e-9);
        assertEquals(6.776, battery(site).leastHours(), 1e-9);
        assertEquals(30.8, CircuitLoad.of(circuit).usableAh(), 1e-9);
        circuit.setColdLeftPercent(170.0);
        assertTrue(PortableSetUp.of(AidEvaluation.of(site.aid, TrialSite.rules("faa"), new EvaluationCache()), LocalDate.of(2026, 7, 1))
                .battery().isEmpty(), "more than all is no share");
        assertThrows(SitingException.class, () -> new BatteryEndurance.Left(0, 100));
    }

    /** Steps of 10, 30 and 100 % of the power: 121, 40.33 and 12.1 h. */
    @Test
    void aDarkerStepLastsLonger() {
        PortableSite site = lamp();
        site.battery(55.0, null);
        for (double percent : new double[] {10, 30, 100}) {
            BrightnessLevel level = SlopewrightFactory.eINSTANCE.createBrightnessLevel();
            level.setPowerPercent(percent);
            site.type.getBrightnessLevels().add(level);
        }
        List<BatteryEndurance.Level> levels = battery(site).levels();
        assertEquals(List.of(1, 2, 3), levels.stream().map(BatteryEndurance.Level::step).toList());
        assertEquals(121, levels.get(0).hours(), 1e-9);
        assertEquals(40.333, levels.get(1).hours(), 1e-3);
        assertEquals(12.1, levels.get(2).hours(), 1e-9);
        site.type.getBrightnessLevels().get(1).setPowerPercent(null);
        assertEquals(List.of(), battery(site).levels(), "a step of unknown power makes no table");
    }

    /** On for 40 % of the time: 12.1 / 0.4 = 30.25 h; with one steady sector the lamp burns all the time. */
    @Test
    void aFlashCountsWhereEverythingFlashes() {
        PortableSite site = lamp();
        site.battery(55.0, null);
        site.enterSectors(-1.5);
        site.type.setFlashOnPercent(40.0);
        assertEquals(12.1, battery(site).leastHours(), 1e-9);
        site.type.getSectors().forEach(sector -> {
            sector.setAboveState(LightState.FLASHING);
            sector.setBelowState(LightState.PULSATING);
        });
        assertEquals(30.25, battery(site).leastHours(), 1e-9);
        site.type.getSectors().get(2).setAboveState(LightState.STEADY);
        assertEquals(12.1, battery(site).leastHours(), 1e-9);
    }

    /** One portable unit for three directions of a pad burns once: 100 W; fixed units burn all at a time. Two of a pair are two. */
    @Test
    void aUnitForSeveralDirectionsCountsOnce() {
        PortableSite site = lamp();
        Circuit circuit = site.battery(55.0, null);
        site.enterSectors(-1.5);
        site.aid.getUnits().add(site.unit(36.155, 0));
        for (double bearing : new double[] {90, 180}) {
            ApproachDirection direction = EcoreUtil.copy(site.direction);
            direction.setTrueBearingDeg(bearing);
            site.helipad.getDirections().add(direction);
            circuit.getAids().add(direction.getAids().get(0));
        }
        assertEquals(3, circuit.getAids().size());
        assertEquals(100, CircuitLoad.of(circuit).powerW(), 1e-9);
        assertEquals(12.1, battery(site).leastHours(), 1e-9);
        circuit.getAids().forEach(aid -> aid.setPortable(false));
        assertEquals(300, CircuitLoad.of(circuit).powerW(), 1e-9);
        circuit.getAids().forEach(aid -> aid.setPortable(true));
        ApproachAid pair = circuit.getAids().get(1);
        pair.getUnits().add(site.unit(36.155, 0));
        assertEquals(200, CircuitLoad.of(circuit).powerW(), 1e-9, "the greatest of them");
        assertEquals(Stream.of(1, 2, 1).toList(), circuit.getAids().stream().map(aid -> aid.getUnits().size()).toList());
    }
}
