package slopewright.evaluation.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.OptionalInt;

import org.junit.jupiter.api.Test;

import slopewright.messages.Message;
import slopewright.model.Aerodrome;
import slopewright.model.ApproachAid;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.SlopewrightFactory;
import slopewright.siting.Families;
import slopewright.siting.IndicatorFamily;
import slopewright.standards.RuleSet;
import slopewright.standards.RuleSets;

/** What a family needs to run is read from the project, and is unknown where nobody entered it. */
class OperationalContextTest {

    private static final SlopewrightFactory MAKE = SlopewrightFactory.eINSTANCE;

    private final RuleSet rules = RuleSets.find("faa").orElseThrow();
    private final Project project = MAKE.createProject();
    private final Aerodrome aerodrome = MAKE.createAerodrome();

    private EquipmentType equipment(String family, Double lampPowerW, Integer lamps) {
        project.setAerodrome(aerodrome);
        EquipmentType type = MAKE.createEquipmentType();
        type.setName("type of " + family);
        type.setFamilyKey(family);
        type.setLampPowerW(lampPowerW);
        type.setLampsPerUnit(lamps);
        aerodrome.getEquipmentTypes().add(type);
        return type;
    }

    private Circuit circuit(String family) {
        ApproachAid aid = MAKE.createApproachAid();
        aid.setFamilyKey(family);
        RunwayEnd end = MAKE.createRunwayEnd();
        end.getAids().add(aid);
        var runway = MAKE.createRunway();
        runway.getEnds().add(end);
        aerodrome.getRunways().add(runway);
        Circuit circuit = MAKE.createCircuit();
        circuit.getAids().add(aid);
        aerodrome.getCircuits().add(circuit);
        return circuit;
    }

    private OperationalContext of(String family, int units) {
        return OperationalContext.of(project, Families.get(family), rules, units);
    }

    /** The numbers of units are the table of the product: two bars of 2, 4 or 12, three of 6 or 16, T forms of 20 and 10. */
    @Test
    void unitsAreThoseOfTheFamily() {
        assertEquals(2, of("two-bar", 4).leastUnits());
        assertEquals("2 (usual 4)", of("two-bar", 4).units().english());
        assertEquals(6, of("three-bar", 6).leastUnits());
        assertEquals("20", of("t-form", 20).units().english());
        assertEquals("10", of("t-form-abbreviated", 10).units().english());
    }

    @Test
    void whatNobodyEnteredIsUnknown() {
        for (IndicatorFamily family : Families.all()) {
            OperationalContext context = of(family.key(), family.unitCounts().get(0));
            assertEquals(OptionalDouble.empty(), context.loadW());
            assertEquals(OptionalInt.empty(), context.brightnessSteps());
            assertEquals(OptionalDouble.empty(), context.batteryHours());
            assertEquals("", context.supply());
            assertEquals(family.displayForm() == IndicatorFamily.DisplayForm.PANELS,
                    context.notes().contains(Message.of("context.panels")));
        }
    }

    /** Three lamps of 200 W (UFC 3-535-01 prefers three a unit) in each of four units are 2400 W. */
    @Test
    void theLoadIsThatOfAllLamps() {
        EquipmentType type = equipment("four-unit-row", 200.0, 3);
        type.setSupply("series circuit 6.6 A");
        circuit("four-unit-row").setBrightnessSteps(5);
        OperationalContext context = of("four-unit-row", 4);
        assertEquals(2400, context.loadW().orElseThrow(), 1e-9);
        assertEquals("series circuit 6.6 A", context.supply());
        assertEquals(5, context.brightnessSteps().orElseThrow());
        type.setLampsPerUnit(null);
        assertEquals(OptionalDouble.empty(), of("four-unit-row", 4).loadW());
        assertEquals(200, of("four-unit-row", 4).lampPowerW().orElseThrow(), 1e-9);
    }

    /** 55 Ah at 100 W: 100 W / 22 V = 4.545 A at the lowest voltage, 12.1 h. */
    @Test
    void aBatteryLastsForItsCapacityOverTheLoad() {
        EquipmentType type = equipment("tri-colour", 100.0, 1);
        type.setMinVoltageV(22.0);
        type.setMaxVoltageV(28.0);
        circuit("tri-colour").setSupply("mains");
        Circuit battery = circuit("tri-colour");
        battery.setSupply("battery 24 V");
        battery.setCapacityAh(55.0);
        OperationalContext context = of("tri-colour", 1);
        assertEquals(12.1, context.batteryHours().orElseThrow(), 1e-9);
        assertEquals("battery 24 V", context.supply());
        type.setLampPowerW(null);
        OperationalContext unknown = of("tri-colour", 1);
        assertEquals(OptionalDouble.empty(), unknown.batteryHours());
        assertTrue(unknown.notes().contains(Message.of("portable.battery-unknown", Message.of("battery.no-load"))),
                unknown.notes().toString());
    }
}
