package slopewright.report.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.checks.AidSubject;
import slopewright.geometry.Angles;
import slopewright.model.AeroplaneGroup;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Projects;
import slopewright.siting.LevelSolution;
import slopewright.siting.Siting;
import slopewright.siting.aid.AidRequests;

/** The siting step by step, with the numbers in the formulas. A formula is printed only where it gives the number that it explains. */
final class CalculationSection {

    private static final double ROUNDING_M = 0.006;

    private final Html html;
    private final AidSubject subject;

    CalculationSection(Html html, AidSubject subject) {
        this.html = html;
        this.subject = subject;
    }

    void write(Siting siting) {
        List<String> steps = new ArrayList<>();
        boolean runway = subject.host() instanceof RunwayEnd;
        String eye = runway ? "MEHT" : "Eye height";
        eyeHeight(siting, eye).ifPresent(steps::add);
        wheels(siting, eye).ifPresent(steps::add);
        Optional<Siting> solved = subject.solved().value();
        solved.ifPresent(rule -> {
            steps.add(String.format(Locale.ROOT, "The rule set lays the %s out at %.2f m for an eye height of %.2f m; the layout stands "
                    + "at %.2f m, a difference of %+.2f m.", subject.family().map(family -> family.name()).orElse("indicator"), rule
                            .distanceM(), rule.eyeHeightM(), siting.distanceM(), siting.distanceM() - rule.distanceM()));
            rule.level().ifPresent(level -> level(level, steps));
        });
        if (solved.isEmpty()) {
            steps.add("The rule set gives no layout to compare with: " + subject.solved().reason() + ".");
        }
        html.section("Calculation");
        steps.forEach(step -> html.element("p class=\"formula\"", step));
    }

    private static Optional<String> eyeHeight(Siting siting, String name) {
        double lens = siting.reference().heightM();
        double sum = lens + siting.distanceM() * Angles.tanDeg(siting.lowestOnSlopeDeg());
        if (Math.abs(sum - siting.eyeHeightM()) > ROUNDING_M) {
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
        double clearance = siting.eyeHeightM() - height;
        if (Math.abs(clearance - siting.wheelClearanceM().getAsDouble()) > ROUNDING_M) {
            return Optional.empty();
        }
        return Optional.of(String.format(Locale.ROOT,
                "Wheel clearance = %s \u2212 eye-to-wheel height = %.2f m \u2212 %.2f m = %.2f m (%s)",
                eye, siting.eyeHeightM(), height, clearance, Projects.label(group.get())));
    }

    private static void level(LevelSolution level, List<String> steps) {
        steps.add(String.format(Locale.ROOT, "Difference in level: the lens stands %+.2f m from the datum at the exact distance of %.2f m "
                + "(%d pieces of ground examined; %s). The published single step gives %.2f m.", level.levelDifferenceM(), level
                        .distanceM(), level.iterations(), level.stopRule(), level.singleStepM()));
    }
}
