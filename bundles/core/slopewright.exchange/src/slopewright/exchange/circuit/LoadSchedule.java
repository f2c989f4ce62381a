package slopewright.exchange.circuit;

import java.util.ArrayList;
import java.util.List;

import slopewright.evaluation.circuit.AidLoad;
import slopewright.evaluation.circuit.CircuitLoad;
import slopewright.exchange.sheet.Sheet;
import slopewright.exchange.sheet.SheetCell;
import slopewright.exchange.sheet.SheetWords;
import slopewright.messages.Message;
import slopewright.messages.MessageRenderer;
import slopewright.model.ApproachAid;
import slopewright.model.Circuit;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;

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

    /** Returns the schedule as a table in a language: a row for each aid, and one for the whole of each circuit. */
    public Sheet sheet(MessageRenderer renderer) {
        SheetWords words = new SheetWords(renderer);
        List<List<SheetCell>> rows = new ArrayList<>();
        for (CircuitLoad circuit : circuits) {
            circuit.aids().forEach(aid -> rows.add(row(words, words.word(ElementNames.of(circuit.circuit())), aid)));
            rows.add(total(words, circuit));
        }
        unfed.forEach(aid -> rows.add(row(words, words.text(Message.of("sheet.circuits.none")), aid)));
        return new Sheet(words.text(Message.of("sheet.circuits.title")), words.columns("circuit", "indicator", "supply", "current",
                "brightness-steps", "units", "lamps-per-unit", "lamp-w", "lamps-w", "lamps-va", "cable-w", "lamps-and-cable-va",
                "regulator-kva", "share-of-rating", "battery-ah", "age-left", "cold-left", "battery-hours").toList(), rows,
                words.texts(List.of(
                        Message.of("sheet.circuits.resistive"), Message.of("sheet.circuits.losses"), Message.of("sheet.circuits.cable"),
                        Message.of("sheet.circuits.battery"), Message.of("sheet.circuits.not-known"),
                        Message.of("sheet.circuits.sum"))), words);
    }

    private static List<SheetCell> row(SheetWords words, String circuit, AidLoad load) {
        List<SheetCell> row = new ArrayList<>(List.of(SheetCell.text(circuit), SheetCell.text(words.word(ElementNames.way(load.aid()))),
                SheetCell.text(""), SheetCell.text(""), SheetCell.text(""), count(words, load.units()), count(words, load.lampsPerUnit()),
                words.number(load.lampPowerW(), 1), words.number(load.powerW(), 1), words.number(load.powerW(), 1)));
        blank(row, 8);
        return row;
    }

    private static List<SheetCell> total(SheetWords words, CircuitLoad load) {
        Circuit circuit = load.circuit();
        String none = words.notApplicable();
        String unknown = words.notKnown();
        List<SheetCell> row = new ArrayList<>(List.of(SheetCell.text(words.word(ElementNames.of(circuit))),
                SheetCell.text(words.text(Message.of("sheet.circuits.total"))),
                SheetCell.text(circuit.getSupply() == null ? unknown : circuit.getSupply()),
                words.number(circuit.getCurrentA(), 2), count(words, circuit.getBrightnessSteps()),
                count(words, load.aids().stream().mapToInt(AidLoad::units).sum())));
        blank(row, 2);
        row.addAll(List.of(words.number(load.powerW(), 1), words.number(load.powerW(), 1), words.number(load.cableW(), 1),
                words.number(load.totalVa(), 1),
                SheetCell.number(circuit.getRegulatorRatingKva(), 2, load.hasBattery() ? none : unknown),
                SheetCell.number(load.ratingPercent(), 1, load.hasBattery() ? none : unknown),
                SheetCell.number(circuit.getCapacityAh(), 1, none),
                SheetCell.number(circuit.getAgeLeftPercent(), 0, load.hasBattery() ? unknown : none),
                SheetCell.number(circuit.getColdLeftPercent(), 0, load.hasBattery() ? unknown : none),
                SheetCell.number(load.batteryHours(), 2, load.hasBattery() ? unknown : none)));
        return row;
    }

    private static SheetCell count(SheetWords words, Integer value) {
        return words.number(value == null ? null : Double.valueOf(value), 0);
    }

    private static void blank(List<SheetCell> row, int cells) {
        for (int i = 0; i < cells; i++) {
            row.add(SheetCell.text(""));
        }
    }
}
