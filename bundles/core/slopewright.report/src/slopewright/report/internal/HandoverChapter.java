package slopewright.report.internal;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.ApproachAid;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;

/** What is handed on: the data to publish for the aerodrome, and circuits with their loads. */
final class HandoverChapter {

    private final Html html;
    private final Project project;
    private final ProjectEvaluation context;

    HandoverChapter(Html html, Project project, ProjectEvaluation context) {
        this.html = html;
        this.project = project;
        this.context = context;
    }

    void write() {
        publication();
        circuits();
    }

    private void publication() {
        html.section("Data to publish for the aerodrome").table("data", List.of(20, 18, 8, 18, 20, 16), List.of("Runway or approach",
                "Type", "Side", "Angle", "MEHT", "Displacement of the axis"));
        for (AidEvaluation subject : context.aids()) {
            Optional<Siting> laid = subject.siting().value();
            html.row("td", List.of(Projects.label(subject.host()), subject.family().map(family -> family.name()).orElse("unknown"),
                    subject.aid().getSide().getName().toLowerCase(Locale.ROOT),
                    laid.map(siting -> Numbers.angle(siting.slopeDeg())).orElse("not known"),
                    subject.host() instanceof RunwayEnd ? laid.map(siting -> Numbers.metresAndFeet(siting.mehtM())).orElse("not known")
                            : "not applicable",
                    displacement(subject.aid().getAxisTurnDeg())));
        }
        html.endTable();
        html.element("p class=\"small\"", "MEHT: the minimum eye height over the threshold at the lowest on-slope signal.");
    }

    private static String displacement(Double turnDeg) {
        return turnDeg == null || turnDeg == 0 ? "none" : Numbers.plain(Math.abs(turnDeg)) + "\u00b0 " + (turnDeg > 0 ? "clockwise"
                : "counter-clockwise");
    }

    private void circuits() {
        html.section("Circuits and loads");
        if (project.getAerodrome() == null || project.getAerodrome().getCircuits().isEmpty()) {
            html.element("p", "The project describes no circuits.");
            return;
        }
        for (Circuit circuit : project.getAerodrome().getCircuits()) {
            html.table("numbers", List.of(40, 15, 15, 15, 15), List.of(Projects.label(circuit) + " (" + supply(circuit) + ")", "Units",
                    "Lamps a unit", "Lamp W", "Load W"));
            double sum = 0;
            boolean complete = true;
            for (ApproachAid aid : circuit.getAids()) {
                EquipmentType type = aid.getEquipment();
                double load = type == null || type.getLampPowerW() == null || type.getLampsPerUnit() == null ? 0
                        : type.getLampPowerW() * type.getLampsPerUnit() * aid.getUnits().size();
                boolean known = load > 0;
                sum += load;
                complete &= known;
                html.row("td", List.of(Projects.path(aid), String.valueOf(aid.getUnits().size()),
                        type == null ? "not known" : Numbers.orUnknown(type.getLampsPerUnit()),
                        type == null ? "not known" : Numbers.orUnknown(type.getLampPowerW()), known ? Numbers.plain(load) : "not known"));
            }
            html.open("tr class=\"sum\"").element("td", complete ? "Together"
                    : "Together, as far as known").raw("<td></td><td></td><td></td>")
                    .element("td", Numbers.plain(sum)).close("tr").endTable();
        }
        html.element("p class=\"small\"", "Loads are those of the lamps; losses of transformers and cables are not in them.");
    }

    private static String supply(Circuit circuit) {
        StringBuilder text = new StringBuilder(Numbers.orUnknown(circuit.getSupply()));
        if (circuit.getCurrentA() != null) {
            text.append(", ").append(Numbers.plain(circuit.getCurrentA())).append(" A");
        }
        if (circuit.getCapacityAh() != null) {
            text.append(", ").append(Numbers.plain(circuit.getCapacityAh())).append(" Ah");
        }
        if (circuit.getBrightnessSteps() != null) {
            text.append(", ").append(circuit.getBrightnessSteps()).append(" brightness steps");
        }
        return text.toString();
    }
}
