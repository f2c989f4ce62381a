package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.model.Project;
import slopewright.model.RunwayEnd;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.siting.Siting;

/** What is handed on: the data to publish for the aerodrome, and circuits with their loads. */
final class HandoverChapter {

    private final Html html;
    private final ReportWords words;
    private final ProjectEvaluation evaluation;

    HandoverChapter(Html html, ProjectEvaluation evaluation) {
        this.html = html;
        this.evaluation = evaluation;
        words = html.words();
    }

    void write() {
        publication();
        circuits(evaluation.project());
    }

    private void publication() {
        html.section("publication").table("data", List.of(20, 18, 8, 18, 20, 16), "runway-or-approach", "type", "side", "angle", "meht",
                "axis-displacement");
        for (AidEvaluation aid : evaluation.aids()) {
            Optional<Siting> laid = aid.siting().value();
            html.row(List.of(words.name(aid.host()), words.family(aid.family(), aid.aid().getFamilyKey()),
                    words.term("side", aid.aid().getSide()),
                    laid.map(siting -> words.angle(siting.slopeDeg())).orElse(words.term("not-known")),
                    aid.host() instanceof RunwayEnd ? laid.map(siting -> words.metresAndFeet(siting.mehtM()))
                            .orElse(words.term("not-known")) : words.term("not-applicable"),
                    displacement(aid.aid().getAxisTurnDeg())));
        }
        html.endTable().remark("meht-means");
    }

    private String displacement(Double turnDeg) {
        return turnDeg == null || turnDeg == 0 ? words.term("no-displacement")
                : words.say(turnDeg > 0 ? "turned-clockwise" : "turned-counter-clockwise", Words.wholeDegrees(Math.abs(turnDeg)));
    }

    private void circuits(Project project) {
        html.section("circuits");
        if (project.getAerodrome() == null || project.getAerodrome().getCircuits().isEmpty()) {
            html.paragraph("no-circuits");
            return;
        }
        project.getAerodrome().getCircuits().forEach(this::circuit);
        html.remark("loads-are-lamps");
    }

    private void circuit(Circuit circuit) {
        html.tableOf("numbers", List.of(40, 15, 15, 15, 15), List.of(words.name(circuit) + " (" + supply(circuit) + ")",
                words.say("head.units"), words.say("head.lamps-a-unit"), words.say("head.lamp-w"), words.say("head.load-w")));
        double sum = 0;
        boolean complete = true;
        for (ApproachAid aid : circuit.getAids()) {
            EquipmentType type = aid.getEquipment();
            Double lampW = type == null ? null : type.getLampPowerW();
            Integer lamps = type == null ? null : type.getLampsPerUnit();
            double loadW = lampW != null && lamps != null ? lampW * lamps * aid.getUnits().size() : 0;
            boolean known = lampW != null && lamps != null;
            sum += loadW;
            complete &= known;
            html.row(List.of(words.path(aid), String.valueOf(aid.getUnits().size()), words.orUnknown(lamps), words.orUnknown(lampW),
                    known ? words.plain(loadW) : words.term("not-known")));
        }
        html.styledRow("sum", List.of(words.say(complete ? "together" : "together-as-known"), "", "", "", words.plain(sum))).endTable();
    }

    private String supply(Circuit circuit) {
        List<String> parts = new ArrayList<>(List.of(words.orUnknown(circuit.getSupply())));
        if (circuit.getCurrentA() != null) {
            parts.add(words.plain(circuit.getCurrentA()) + " A");
        }
        if (circuit.getCapacityAh() != null) {
            parts.add(words.plain(circuit.getCapacityAh()) + " Ah");
        }
        if (circuit.getBrightnessSteps() != null) {
            parts.add(words.render(Message.of("report.brightness-steps", Words.count(circuit.getBrightnessSteps()))));
        }
        return String.join(", ", parts);
    }
}
