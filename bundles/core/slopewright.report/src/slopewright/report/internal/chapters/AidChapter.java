package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.Outcome;
import slopewright.drawing.plan.PlanScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.section.SectionScene;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.WheelClearance;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.RunwayEnd;
import slopewright.report.internal.html.Facts;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.report.internal.pdf.Pictures;
import slopewright.siting.Siting;

/**
 * The chapter of one approach aid, four pages at most: siting, calculation with its numbers, obstacles, signals, tolerances, and the two
 * drawings that a decision needs. All others are in the set of drawings.
 */
final class AidChapter {

    private final Html html;
    private final ReportWords words;
    private final ReportSource source;
    private final AidEvaluation aid;
    private final Pictures pictures;
    private final boolean atRunway;

    AidChapter(Html html, ReportSource source, AidEvaluation aid, Pictures pictures) {
        this.html = html;
        this.source = source;
        this.aid = aid;
        this.pictures = pictures;
        words = html.words();
        atRunway = aid.host() instanceof RunwayEnd;
    }

    void write() {
        Optional<Siting> laid = aid.siting().value();
        html.open("div class=\"keep\"").pairs(about(laid)).close("div");
        if (laid.isEmpty()) {
            html.alert("no-layout", aid.siting().reason().orElseThrow());
        }
        findings();
        laid.ifPresent(this::layout);
    }

    private void layout(Siting siting) {
        new UnitSection(html, source.project(), aid).write(siting);
        if (!siting.notes().isEmpty()) {
            html.list(words.render(siting.notes()));
        }
        new CalculationSection(html, aid, source.outcomes(aid)).write(siting);
        wheels();
        new ObstacleSection(html, source.project(), aid).write(siting);
        new SignalTable(html).write(siting);
        new ToleranceSection(html, aid).write();
        drawings(siting);
    }

    private Facts about(Optional<Siting> laid) {
        Facts facts = html.newFacts().add("type", words.family(aid.family(), aid.aid().getFamilyKey()))
                .add("rule-set", words.ruleSet(aid.rules())).add("side", words.term("side", aid.aid().getSide()));
        laid.ifPresent(siting -> siting(siting, facts));
        EquipmentType type = aid.aid().getEquipment();
        if (type != null) {
            facts.add("equipment", words.say("equipment", Words.name(words.name(type)), Words.name(words.orUnknown(
                    type.getLampsPerUnit())), Words.name(words.orUnknown(type.getLampPowerW(), "W")), Words.name(words.orUnknown(
                            type.getSupply()))));
        }
        return facts;
    }

    private void siting(Siting siting, Facts facts) {
        facts.add("approach-slope", words.angle(siting.slopeDeg()))
                .add(atRunway ? "distance-from-threshold" : "distance-from-hover", words.metresAndFeet(siting.distanceM()))
                .add("lowest-signal", words.angle(siting.lowestOnSlopeDeg()))
                .add(atRunway ? "meht" : "eye-height-at-hover", words.metresAndFeet(siting.mehtM()));
        siting.nominalEyeHeightM().ifPresent(nominal -> facts.add("nominal-eye-height", words.metresAndFeet(nominal)));
        siting.wheelClearanceM().ifPresent(clearance -> facts.add("wheel-clearance", words.metresAndFeet(clearance)));
        facts.add("margin", aid.obstacles().value().map(compared -> compared.governing()
                .map(governing -> words.say(compared.isComplete() ? "margin-of" : "margin-of-incomplete", Words.margin(governing.marginM()),
                        Words.name(governing.label())))
                .orElseGet(() -> words.say(compared.isComplete() ? "margin-nothing-inside" : "margin-nothing-known")))
                .orElseGet(() -> words.render(aid.obstacles().reason().orElse(Message.of("siting.no-surface")))));
    }

    private void findings() {
        List<Outcome> findings = source.findings(aid);
        html.open("div class=\"locked\"");
        if (findings.isEmpty()) {
            html.paragraph("no-findings-here");
        } else {
            html.section("aid-findings");
            new OutcomeTables(html, aid.project()).shortFindings(findings);
        }
        html.close("div");
    }

    private void wheels() {
        List<WheelClearance> clearances = aid.wheelClearances();
        List<String> unknown = aid.host().getRegularGroups().stream().filter(group -> group.getEyeToWheelM() == null).map(words::name)
                .toList();
        if (!atRunway || clearances.isEmpty() && unknown.isEmpty()) {
            return;
        }
        html.open("div class=\"keep\"").section("wheel-clearance").table("numbers", List.of(28, 14, 14, 14, 14, 16), "aeroplane-group",
                "eye-to-wheel-m", "clearance-m", "desired-m", "minimum-m", "margin-to-desired-m");
        for (WheelClearance wheels : clearances) {
            html.row(List.of(words.name(wheels.group()), words.two(wheels.eyeToWheelM()), words.two(wheels.clearanceM()),
                    wheels.band().map(band -> words.two(band.desiredM())).orElse("-"),
                    wheels.band().map(band -> words.two(band.minimumM())).orElse("-"),
                    wheels.band().map(band -> words.margin(wheels.clearanceM() - band.desiredM(), Measure.LENGTH_M)).orElse("-")));
        }
        unknown.forEach(group -> html.row(List.of(group, words.term("not-known"), words.term("to-clear-up"), "", "", "")));
        html.endTable().close("div");
    }

    private void drawings(Siting siting) {
        if (aid.frame().value().isEmpty()) {
            html.alert("no-drawings", aid.frame().reason().orElseThrow());
            return;
        }
        DrawnAid drawn = DrawnAid.of(aid, words.renderer());
        List<Scene> scenes = new ArrayList<>(List.of(PlanScene.layout(drawn), SectionScene.of(drawn)));
        html.section("drawings");
        scenes.forEach(scene -> html.figure(scene.title(), pictures.add(scene)));
        html.remark("drawing-set");
    }
}
