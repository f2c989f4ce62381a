package slopewright.report.internal.commissioning;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import slopewright.drawing.circuit.CircuitScene;
import slopewright.evaluation.AidEvaluation;
import slopewright.messages.Words;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.siting.Siting;
import slopewright.siting.Trait;
import slopewright.siting.UnitPlan;
import slopewright.standards.CitedValue;

/**
 * The lines of a commissioning sheet that are filled in on site and stand in no project: weather and instruments of the day, serial
 * numbers, lamps, tilt test, insulation resistance and the current of each brightness step, each beside what is expected of it as far as
 * that is known.
 */
final class SiteTests {
    private final Html html;
    private final ReportWords words;
    private final AidEvaluation aid;
    private final Siting siting;

    SiteTests(Html html, AidEvaluation aid, Siting siting) {
        this.html = html;
        this.aid = aid;
        this.siting = siting;
        words = html.words();
    }

    private Optional<EquipmentType> equipment() {
        return Optional.ofNullable(aid.aid().getEquipment());
    }

    /** Adds what the day was like and with what was measured. */
    void day() {
        html.part("test-day").table("write", List.of(40, 60), "what", "found");
        List.of("weather", "temperature", "wind", "instruments").forEach(line -> html.row(List.of(words.say("test." + line), "")));
        html.endTable();
    }

    /** Adds a line for each unit; those without lights have a serial number alone. */
    void units() {
        boolean lights = aid.family().filter(family -> !family.traits().contains(Trait.PANELS)).isPresent();
        String lamps = equipment().map(EquipmentType::getLampsPerUnit).map(count -> words.say("test.of-lamps", Words.count(count)))
                .orElse("");
        if (lights) {
            html.part("test-units").table("write", List.of(10, 26, 16, 18, 15, 15), "unit", "serial-number", "lamps-burning",
                    "light-out-at", "light-out-limit", "light-returns");
        } else {
            html.part("test-panels").table("write", List.of(20, 80), "unit", "serial-number");
        }
        for (UnitPlan unit : siting.units()) {
            html.row(lights ? List.of(unit.id(), "", lamps, "", tiltLimit(), "") : List.of(unit.id(), ""));
        }
        html.endTable();
    }

    /** At which tilt the light goes out: that of the equipment, else the one that the rule set asks for. */
    private String tiltLimit() {
        Optional<Double> ruled = aid.family().flatMap(family -> aid.rules().find(family.ruleKey() + ".tilt-switch-off-deg"))
                .map(CitedValue::value);
        return equipment().map(EquipmentType::getTiltCutOffDeg).or(() -> ruled).map(words::minutes).orElse(words.term("not-known"));
    }

    /** Adds insulation and currents of the circuit, or the voltages of a battery. */
    void supply() {
        Optional<Circuit> circuit = CircuitScene.feeding(aid.aid());
        boolean battery = circuit.filter(found -> found.getCapacityAh() != null).isPresent();
        html.part("test-supply").table("write", List.of(40, 20, 20, 20), "what", "expected", "measured", "date-instrument");
        if (battery) {
            List.of("voltage-idle", "voltage-loaded").forEach(line -> html.row(List.of(words.say("test." + line), volts(), "", "")));
        } else {
            html.row(List.of(words.say("test.insulation"), "", "", ""));
            int steps = circuit.map(Circuit::getBrightnessSteps).orElse(1);
            IntStream.rangeClosed(1, steps).forEach(step -> html.row(List.of(steps == 1 ? words.say("test.current")
                    : words.say("test.current-of-step", Words.count(step)), step < steps ? "" : circuit.map(Circuit::getCurrentA)
                            .map(amperes -> words.plain(amperes) + " A").orElse(words.term("not-known")), "", "")));
        }
        html.endTable();
    }

    private String volts() {
        return equipment().filter(type -> type.getMinVoltageV() != null && type.getMaxVoltageV() != null)
                .map(type -> words.say("test.volts", Words.number(type.getMinVoltageV()), Words.number(type.getMaxVoltageV())))
                .orElse(words.term("not-known"));
    }
}
