package slopewright.exchange.circuit;

import java.util.ArrayList;
import java.util.List;

import slopewright.evaluation.circuit.AidLoad;
import slopewright.evaluation.circuit.CircuitLoad;
import slopewright.exchange.sheet.Sheet;
import slopewright.exchange.sheet.SheetCell;
import slopewright.model.ApproachAid;
import slopewright.model.Circuit;
import slopewright.model.Project;
import slopewright.model.util.Projects;

/**
 * Circuits and loads for the electrician. Loads are those of the lamps, taken as resistive, so that watts and volt-amperes are the same;
 * null where a number is not known, never zero.
 *
 * @param circuits the circuits with their aids
 * @param unfed    aids that belong to no circuit
 */
public record LoadSchedule(List<CircuitLoad> circuits, List<AidLoad> unfed) {

    /** Copies the lists. */
    public LoadSchedule {
        circuits = List.copyOf(circuits);
        unfed = List.copyOf(unfed);
    }

    /** Makes the schedule of a project. */
    public static LoadSchedule of(Project project) {
        List<CircuitLoad> circuits = project.getAerodrome() == null ? List.of() : project.getAerodrome().getCircuits().stream()
                .map(CircuitLoad::of).toList();
        List<ApproachAid> fed = circuits.stream().flatMap(load -> load.circuit().getAids().stream()).toList();
        return new LoadSchedule(circuits, Projects.aids(project).stream().filter(aid -> !fed.contains(aid)).map(AidLoad::of)
                .toList());
    }

    /** Returns the schedule as a table: a row for each aid, and one for the whole of each circuit. */
    public Sheet sheet() {
        List<List<SheetCell>> rows = new ArrayList<>();
        for (CircuitLoad circuit : circuits) {
            circuit.aids().forEach(aid -> rows.add(row(Projects.label(circuit.circuit()), aid)));
            rows.add(total(circuit));
        }
        unfed.forEach(aid -> rows.add(row("no circuit", aid)));
        return new Sheet("Circuits and loads", List.of("circuit", "indicator", "supply", "current A", "brightness steps", "units",
                "lamps a unit", "lamp W", "lamps W", "lamps VA", "cable W", "lamps and cable VA", "regulator kVA",
                "share of rating percent", "battery Ah", "battery hours"), rows, List.of(
                        "Lamps are taken as resistive, so their watts are their volt-amperes.",
                        "Losses of transformers and of the regulator are not in them.",
                        "The cable takes the square of the current times its resistance over the length that was entered.",
                        "Battery hours are those of the full rated capacity; age, cold and the rate of discharge shorten them.",
                        "Not known means that equipment or circuit data are missing; it is not zero.",
                        "A sum is not known where a part is not."));
    }

    private static List<SheetCell> row(String circuit, AidLoad load) {
        List<SheetCell> row = new ArrayList<>(List.of(SheetCell.text(circuit), SheetCell.text(Projects.path(load.aid())),
                SheetCell.text(""), SheetCell.text(""), SheetCell.text(""), count(load.units()), count(load.lampsPerUnit()),
                SheetCell.number(load.lampPowerW(), 1), SheetCell.number(load.powerW(), 1), SheetCell.number(load.powerW(), 1)));
        blank(row, 6);
        return row;
    }

    private static List<SheetCell> total(CircuitLoad load) {
        Circuit circuit = load.circuit();
        String none = "not applicable";
        List<SheetCell> row = new ArrayList<>(List.of(SheetCell.text(Projects.label(circuit)), SheetCell.text("total"),
                SheetCell.text(circuit.getSupply() == null ? SheetCell.NOT_KNOWN : circuit.getSupply()),
                SheetCell.number(circuit.getCurrentA(), 2), count(circuit.getBrightnessSteps()),
                count(load.aids().stream().mapToInt(AidLoad::units).sum())));
        blank(row, 2);
        row.addAll(List.of(SheetCell.number(load.powerW(), 1), SheetCell.number(load.powerW(), 1), SheetCell.number(load.cableW(), 1),
                SheetCell.number(load.totalVa(), 1),
                SheetCell.number(circuit.getRegulatorRatingKva(), 2, load.hasBattery() ? none : SheetCell.NOT_KNOWN),
                SheetCell.number(load.ratingPercent(), 1, load.hasBattery() ? none : SheetCell.NOT_KNOWN),
                SheetCell.number(circuit.getCapacityAh(), 1, none),
                SheetCell.number(load.batteryHours(), 2, load.hasBattery() ? SheetCell.NOT_KNOWN : none)));
        return row;
    }

    private static SheetCell count(Integer value) {
        return SheetCell.number(value == null ? null : Double.valueOf(value), 0);
    }

    private static void blank(List<SheetCell> row, int cells) {
        for (int i = 0; i < cells; i++) {
            row.add(SheetCell.text(""));
        }
    }
}
