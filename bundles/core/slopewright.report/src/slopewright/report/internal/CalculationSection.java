package slopewright.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.AidRequests;
import slopewright.geometry.Angles;
import slopewright.model.AeroplaneGroup;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.LevelSolution;
import slopewright.siting.Siting;
import slopewright.siting.UnitPlan;

/** The siting step by step, with the numbers in the formulas. A formula is printed only where it gives the number that it explains. */
final class CalculationSection {

    private static final double ROUNDING_M = 0.006;
    private static final double ROUNDING_MIN = 0.01;

    private final Html html;
    private final AidEvaluation subject;

    CalculationSection(Html html, AidEvaluation subject) {
        this.html = html;
        this.subject = subject;
    }

    void write(Siting siting) {
        List<String> steps = new ArrayList<>();
        settings(siting, steps);
        boolean runway = subject.host() instanceof RunwayEnd;
        String eye = runway ? "MEHT" : "Eye height";
        eyeHeight(siting, eye).ifPresent(steps::add);
        wheels(siting, eye).ifPresent(steps::add);
        Optional<Siting> solved = subject.solved().value();
        solved.ifPresent(rule -> {
            steps.add(String.format(Locale.ROOT, "The rule set lays the %s out at %.2f m for an eye height of %.2f m; the layout stands "
                    + "at %.2f m, a difference of %+.2f m.", subject.family().map(family -> family.name()).orElse("indicator"), rule
                            .distanceM(), rule.mehtM(), siting.distanceM(), siting.distanceM() - rule.distanceM()));
            rule.level().ifPresent(level -> level(level, steps));
        });
        if (solved.isEmpty()) {
            steps.add("The rule set gives no layout to compare with: " + subject.solved().reason() + ".");
        }
        surface(siting, steps);
        html.section("Calculation").open("ol class=\"steps\"");
        steps.forEach(step -> html.element("li", step));
        html.close("ol");
    }

    /** The settings as differences from the slope, the lowest first, in minutes of arc. */
    private static void settings(Siting siting, List<String> steps) {
        StringBuilder text = new StringBuilder("Setting = approach slope + offset: ");
        String between = "";
        for (UnitPlan unit : siting.units()) {
            double offMin = Angles.degToMinutes(unit.settingDeg() - siting.slopeDeg());
            text.append(between).append(unit.id()).append(" = ").append(Angles.format(siting.slopeDeg())).append(offMin < 0 ? " \u2212 "
                    : " + ").append(Numbers.plain(Math.abs(offMin))).append("' = ").append(Angles.format(unit.settingDeg()));
            between = "; ";
        }
        steps.add(text + ".");
        siting.citations().stream().filter(use -> use.name().contains("allowance")).findFirst().ifPresent(use -> bounding(siting, use
                .value(), steps));
    }

    /** The unit whose setting bounds the signal from below, where the published allowance leads from it to the lowest signal. */
    private static void bounding(Siting siting, double allowanceMin, List<String> steps) {
        siting.units().stream().filter(unit -> Math.abs(Angles.degToMinutes(unit.settingDeg() - siting.lowestOnSlopeDeg()) - allowanceMin)
                < ROUNDING_MIN).findFirst().ifPresent(unit -> steps.add(String.format(Locale.ROOT,
                        "Lowest on-slope signal = setting of %s \u2212 allowance = %s \u2212 %s' = %s.", unit.id(), Angles.format(unit
                                .settingDeg()), Numbers.plain(allowanceMin), Angles.format(siting.lowestOnSlopeDeg()))));
    }

    /** Height of the obstacle surface where it ends, as a check on its slope. */
    private static void surface(Siting siting, List<String> steps) {
        siting.surface().ifPresent(plan -> steps.add(String.format(Locale.ROOT, "Obstacle surface = height of its start + (distance "
                + "outward \u2212 distance of its start) \u00d7 tan(slope) = %.2f m + (d \u2212 %.2f m) \u00d7 tan %s, d outward from the "
                + "origin; 1000 m beyond its start it stands at %.2f m.", plan.startHeightM(), -plan.startAlongM(), Angles.format(plan
                        .slopeDeg()), plan.startHeightM() + 1000 * Angles.tanDeg(plan.slopeDeg()))));
    }

    private static Optional<String> eyeHeight(Siting siting, String name) {
        double lens = siting.reference().heightM();
        double sum = lens + siting.distanceM() * Angles.tanDeg(siting.lowestOnSlopeDeg());
        if (Math.abs(sum - siting.mehtM()) > ROUNDING_M) {
            return Optional.empty();
        }
        return Optional.of(String.format(Locale.ROOT, "%s = lens height + distance \u00d7 tan(lowest on-slope signal) = %.2f m + %.2f m "
                + "\u00d7 tan %s = %.2f m", name, lens, siting.distanceM(), Angles.format(siting.lowestOnSlopeDeg()), sum));
    }

    private Optional<String> wheels(Siting siting, String eye) {
        Optional<AeroplaneGroup> group = AidRequests.mostDemanding(subject.host());
        if (group.isEmpty() || siting.wheelClearanceM().isEmpty()) {
            return Optional.empty();
        }
        double height = group.get().getEyeToWheelM();
        double clearance = siting.mehtM() - height;
        if (Math.abs(clearance - siting.wheelClearanceM().getAsDouble()) > ROUNDING_M) {
            return Optional.empty();
        }
        return Optional.of(String.format(Locale.ROOT,
                "Wheel clearance = %s \u2212 eye-to-wheel height = %.2f m \u2212 %.2f m = %.2f m (%s)",
                eye, siting.mehtM(), height, clearance, Projects.label(group.get())));
    }

    private static void level(LevelSolution level, List<String> steps) {
        steps.add(String.format(Locale.ROOT, "Difference in level: the lens stands %+.2f m from the datum at the exact distance of %.2f m "
                + "(%d pieces of ground examined; %s). The published single step gives %.2f m.", level.levelDifferenceM(), level
                        .distanceM(), level.iterations(), level.stopRule(), level.singleStepM()));
    }
}
