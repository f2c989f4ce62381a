package slopewright.report.internal.chapters;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import slopewright.checks.Outcome;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.Attempt;
import slopewright.geometry.Angles;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.RunwayEnd;
import slopewright.report.internal.html.Html;
import slopewright.siting.LevelSolution;
import slopewright.siting.OnSlopeBound;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;

/**
 * The siting step by step, with the numbers in the formulas, and the steps that rules recorded while they worked out what they judge. A
 * formula of the layout is printed only where it gives the number that it explains.
 */
final class CalculationSection {

    private static final double ROUNDING_M = 0.006;
    private static final double ROUNDING_DEG = 1e-7;
    private static final double SURFACE_AT_M = 1000;

    private final Html html;
    private final AidEvaluation aid;
    private final List<Outcome> outcomes;

    CalculationSection(Html html, AidEvaluation aid, List<Outcome> outcomes) {
        this.html = html;
        this.aid = aid;
        this.outcomes = outcomes;
    }

    void write(Siting siting) {
        Set<Message> steps = new LinkedHashSet<>();
        settings(siting, steps);
        bound(siting, steps);
        wheels(siting, steps);
        solved(siting, steps);
        surface(siting, steps);
        List<String> lines = html.words().render(new ArrayList<>(steps));
        Map<String, Set<Message>> more = new LinkedHashMap<>();
        outcomes.forEach(outcome -> outcome.steps().stream().filter(step -> !steps.contains(step)).forEach(step -> more.computeIfAbsent(
                html.words().say("rule-and-title", Words.name(outcome.rule()), outcome.title()), key -> new LinkedHashSet<>()).add(step)));
        html.section("calculation").steps(lines);
        if (!more.isEmpty()) {
            html.table("data", List.of(28, 72), "rule", "steps-of-rule");
            more.forEach((rule, of) -> html.row(List.of(rule, String.join("; ", html.words().render(new ArrayList<>(of))))));
            html.endTable();
        }
    }

    /** The settings as differences from the slope, in minutes of arc. */
    private static void settings(Siting siting, Set<Message> steps) {
        List<Argument> settings = new ArrayList<>();
        for (UnitPlan unit : siting.units()) {
            double offMin = Angles.degToMinutes(unit.settingDeg() - siting.slopeDeg());
            settings.add(Message.of(offMin < 0 ? "step.layout.setting-below" : "step.layout.setting-above", Words.name(unit.id()),
                    Words.deg(siting
                    .slopeDeg()), Words.number(Math.abs(offMin)), Words.deg(unit.settingDeg())));
        }
        steps.add(Message.of("step.layout.settings", Words.list(settings)));
    }

    /** The unit that bounds the on-slope signal from below, the allowance on it, and the eye height on that angle. */
    private void bound(Siting siting, Set<Message> steps) {
        Optional<OnSlopeBound> edge = aid.family().flatMap(family -> family.lowestOnSlope(siting.units(), 0));
        Optional<UnitPlan> bounding = edge.flatMap(found -> siting.units().stream().filter(unit -> unit.id().equals(found.unitId()))
                .findFirst());
        if (bounding.isEmpty()) {
            return;
        }
        UnitPlan unit = bounding.get();
        double allowanceDeg = edge.get().angleDeg() - siting.lowestOnSlopeDeg();
        if (allowanceDeg > ROUNDING_DEG) {
            steps.add(Message.of("step.layout.lowest-signal", Words.name(unit.id()), Words.deg(edge.get().angleDeg()), Words.number(
                    Angles.degToMinutes(allowanceDeg)), Words.deg(siting.lowestOnSlopeDeg())));
        }
        double lensM = unit.place().heightM();
        double distanceM = unit.place().alongM();
        double sumM = lensM + distanceM * Angles.tanDeg(siting.lowestOnSlopeDeg());
        if (Math.abs(sumM - siting.mehtM()) <= ROUNDING_M) {
            steps.add(Message.of(aid.host() instanceof RunwayEnd ? "step.meht" : "step.layout.eye-height-at-hover", Words.m(lensM), Words.m(
                    distanceM), Words.deg(siting.lowestOnSlopeDeg()), Words.m(siting.mehtM())));
        }
    }

    private void wheels(Siting siting, Set<Message> steps) {
        aid.wheelClearances().forEach(wheels -> steps.add(Message.of("step.wheel-clearance", Words.m(siting.mehtM()), Words.m(wheels
                .eyeToWheelM()), Words.m(wheels.clearanceM()))));
    }

    private void solved(Siting siting, Set<Message> steps) {
        Attempt<Siting> solved = aid.solvedAtLens();
        if (solved.value().isEmpty()) {
            steps.add(Message.of("step.layout.nothing-solved", solved.reason().orElseThrow()));
            return;
        }
        Siting rule = solved.value().get();
        steps.add(Message.of("step.layout.solved", Words.mm(rule.distanceM()), Words.m(rule.mehtM()), Words.mm(siting.distanceM()),
                Words.mm(siting.distanceM() - rule.distanceM())));
        aid.solved().value().flatMap(Siting::level).ifPresent(level -> steps.add(level(level)));
    }

    private static Message level(LevelSolution level) {
        return Message.of("step.layout.level", Words.m(level.levelDifferenceM()), Words.m(level.distanceM()),
                Words.count(level.iterations()),
                Words.m(level.singleStepM()));
    }

    /** Height of the obstacle surface a kilometre out, as a check on its slope. */
    private static void surface(Siting siting, Set<Message> steps) {
        siting.surface().ifPresent(plan -> steps.add(Message.of("step.layout.surface", Words.m(plan.startHeightM()),
                Words.m(-plan.startAlongM()),
                Words.deg(plan.slopeDeg()), Words.wholeM(SURFACE_AT_M), Words.m(plan.startHeightM() + SURFACE_AT_M * Angles.tanDeg(
                        plan.slopeDeg())))));
    }
}
