package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.List;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.exchange.publish.PublishedData;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.model.Project;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;

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

    /** The same data as the sheet and the file that are handed over: one row an indicator, its sentence for the publication at the end. */
    private void publication() {
        html.section("publication").table("data", List.of(13, 14, 10, 12, 11, 14, 26), "runway-or-approach", "type-and-side", "angle",
                "meht",
                "axis-displacement", "published-place", "published-words");
        PublishedData data = PublishedData.of(evaluation);
        String unknown = words.term("not-known");
        for (PublishedData.PublishedAid aid : data.aids()) {
            AidEvaluation evaluated = aid.aid();
            html.row(List.of(words.name(evaluated.host()), words.family(evaluated.family(), evaluated.aid().getFamilyKey()) + ", "
                    + words.term("side", evaluated.aid().getSide()), aid.angleDeg() == null ? unknown : words.angle(aid.angleDeg()),
                    !aid.isAtRunway() ? words.term("not-applicable") : aid.mehtM() == null ? unknown : words.metresAndFeet(aid.mehtM()),
                    displacement(aid.axisTurnDeg()), aid.latitude().flatMap(latitude -> aid.longitude().map(longitude -> latitude + " "
                            + longitude)).orElse(unknown), aid.wording(words.renderer())));
        }
        List<String> remarks = new ArrayList<>(List.of(words.say("meht-means"), words.render(Message.of("sheet.publish.place"))));
        remarks.addAll(words.render(data.taken()));
        html.endTable().element("p class=\"small\"", String.join(" ", remarks));
    }

    private String displacement(double turnDeg) {
        return turnDeg == 0 ? words.term("no-displacement")
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
