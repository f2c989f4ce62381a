package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import slopewright.checks.Outcome;
import slopewright.drawing.pilot.PilotScene;
import slopewright.drawing.plan.PlanScene;
import slopewright.drawing.scene.DrawnAid;
import slopewright.drawing.scene.Scene;
import slopewright.drawing.section.SectionScene;
import slopewright.drawing.signal.SignalScene;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.WheelClearance;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.report.internal.html.Facts;
import slopewright.report.internal.html.Html;
import slopewright.report.internal.html.ReportWords;
import slopewright.report.internal.pdf.Pictures;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;
import slopewright.siting.site.SiteFrame;

/** The chapter of one approach aid: layout, findings, calculation, heights, signals, obstacles, drawings. */
final class AidChapter {

    private static final double RUNWAY_VIEW_M = 1500;
    private static final double HELIPAD_VIEW_M = 300;
    private static final int DEGREE_DECIMALS = 4;

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
        html.facts(about(laid));
        if (laid.isEmpty()) {
            html.alert("no-layout", aid.siting().reason().orElseThrow());
        }
        findings();
        laid.ifPresent(this::layout);
    }

    private void layout(Siting siting) {
        units(siting);
        new CoordinateSection(html, source.project(), aid).write(siting);
        new CalculationSection(html, aid, source.outcomes(aid)).write(siting);
        wheels();
        new SignalTable(html).write(siting);
        new ObstacleSection(html, source.project(), aid).write(siting);
        new ToleranceSection(html, aid).write();
        if (!siting.notes().isEmpty()) {
            html.section("notes").list(words.render(siting.notes()));
        }
        drawings(siting);
    }

    private Facts about(Optional<Siting> laid) {
        Facts facts = html.newFacts().add("type", words.family(aid.family(), aid.aid().getFamilyKey()))
                .add("rule-set", words.ruleSet(aid.rules())).add("side", words.term("side", aid.aid().getSide()));
        laid.ifPresent(siting -> siting(siting, facts));
        EquipmentType type = aid.aid().getEquipment();
        if (type != null) {
            facts.add("equipment", words.say("equipment", Words.name(Projects.label(type)), Words.name(words.orUnknown(
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
                .map(governing -> words.say(compared.isComplete() ? "margin-of" : "margin-of-incomplete", Words.m(governing.marginM()),
                        Words.name(governing.label())))
                .orElseGet(() -> words.say(compared.isComplete() ? "margin-nothing-inside" : "margin-nothing-known")))
                .orElseGet(() -> words.render(aid.obstacles().reason().orElse(Message.of("siting.no-surface")))));
    }

    private void findings() {
        List<Outcome> findings = source.findings(aid);
        html.open("div class=\"locked\"").section("aid-findings");
        if (findings.isEmpty()) {
            html.paragraph("no-findings");
        } else {
            new OutcomeTables(html).aidFindings(findings);
        }
        html.close("div");
    }

    private void units(Siting siting) {
        html.section("units").table("numbers", List.of(9, 7, 12, 12, 15, 15, 15, 15), "unit", "bar", "along-m", "right-m", "lens-above-m",
                "lens-elevation-m", "setting", "setting-degrees");
        Optional<Double> datum = aid.frame().value().map(SiteFrame::originElevationM);
        for (UnitPlan unit : siting.units()) {
            double heightM = unit.place().heightM();
            html.row(List.of(unit.id(), String.valueOf(unit.bar()), words.two(unit.place().alongM()), words.two(unit.place().rightM()),
                    words.two(heightM), datum.map(from -> words.two(from + heightM)).orElse(words.term("not-known")),
                    words.minutes(unit.settingDeg()), words.fixed(unit.settingDeg(), DEGREE_DECIMALS)));
        }
        html.endTable().remark(atRunway ? "unit-places-runway" : "unit-places-helipad");
        if (siting.units().size() > 1) {
            double lowest = siting.units().stream().mapToDouble(unit -> unit.place().heightM()).min().orElseThrow();
            double highest = siting.units().stream().mapToDouble(unit -> unit.place().heightM()).max().orElseThrow();
            html.remark("level-difference", Words.mm(highest - lowest));
        }
    }

    private void wheels() {
        List<WheelClearance> clearances = aid.wheelClearances();
        List<String> unknown = aid.host().getRegularGroups().stream().filter(group -> group.getEyeToWheelM() == null).map(Projects::label)
                .toList();
        if (!atRunway || clearances.isEmpty() && unknown.isEmpty()) {
            return;
        }
        html.open("div class=\"keep\"").section("wheel-clearance").table("numbers", List.of(28, 14, 14, 14, 14, 16), "aeroplane-group",
                "eye-to-wheel-m", "clearance-m", "desired-m", "minimum-m", "margin-to-desired-m");
        for (WheelClearance wheels : clearances) {
            html.row(List.of(Projects.label(wheels.group()), words.two(wheels.eyeToWheelM()), words.two(wheels.clearanceM()),
                    wheels.band().map(band -> words.two(band.desiredM())).orElse("-"),
                    wheels.band().map(band -> words.two(band.minimumM())).orElse("-"),
                    wheels.band().map(band -> words.two(wheels.clearanceM() - band.desiredM())).orElse("-")));
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
        List<Scene> scenes = new ArrayList<>(List.of(PlanScene.layout(drawn), PlanScene.detail(drawn), SectionScene.near(drawn),
                SectionScene.of(drawn)));
        if (siting.surface().isPresent()) {
            scenes.add(PlanScene.surface(drawn));
        }
        if (SignalScene.fits(siting)) {
            scenes.add(SignalScene.of(drawn));
        }
        scenes.add(PilotScene.of(drawn, PilotScene.eyeOnSlope(drawn, atRunway ? RUNWAY_VIEW_M : HELIPAD_VIEW_M)));
        html.section("drawings");
        scenes.forEach(scene -> html.figure(scene.title(), pictures.add(scene)));
    }
}
