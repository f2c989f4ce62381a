package slopewright.checks;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.Penetration;
import slopewright.geometry.ProtectionSurface;
import slopewright.model.AeroplaneGroup;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.Obstacle;
import slopewright.model.Project;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SurfacePlan;
import slopewright.siting.remedy.SurveyedShape;

/**
 * How the numbers of an outcome come about: formulas with the numbers put in. A formula is given only where it leads to the number that
 * it explains, so that no working contradicts its outcome. Lengths are written to the centimetre, angles in degrees and minutes.
 */
public final class Workings {

    private static final double ROUNDING_M = 0.006;

    /** The formula of a step. The words of {@link #form()} stand for numbers in the order of {@link Step#numbers()}. */
    public enum Kind {
        /** Eye height over the threshold: lens height, distance, angle, result. */
        EYE_HEIGHT("Eye height over the threshold"
                + " = lens height + distance \u00d7 tan(lowest on-slope signal) = %s + %s \u00d7 tan %s = %s"),
        /** Wheel clearance: eye height, eye path to wheel path, result. */
        WHEEL_CLEARANCE("Wheel clearance = eye height \u2212 eye path to wheel path = %s \u2212 %s = %s"),
        /** Height of the obstacle surface: height of the inner edge, distance outward, slope, result. */
        SURFACE_HEIGHT("Height of the surface there"
                + " = height of the inner edge + distance outward \u00d7 tan(slope) = %s + %s \u00d7 tan %s = %s"),
        /** Margin of a value that must not be less: value, limit, margin. */
        MARGIN_AT_LEAST("Margin = value \u2212 least = %s \u2212 %s = %s"),
        /** Margin of a value that must not be more: limit, value, margin. */
        MARGIN_AT_MOST("Margin = limit \u2212 value = %s \u2212 %s = %s");

        private final String form;

        Kind(String form) {
            this.form = form;
        }

        /** Returns the formula with a {@code %s} for each number. */
        public String form() {
            return form;
        }
    }

    /**
     * One step.
     *
     * @param kind    the formula
     * @param numbers the numbers with their units, the result last
     */
    public record Step(Kind kind, List<String> numbers) {

        /** Copies the numbers. */
        public Step {
            numbers = List.copyOf(numbers);
        }

        /** Returns the formula with the numbers put in. */
        public String text() {
            return String.format(Locale.ROOT, kind.form(), numbers.toArray());
        }
    }

    private Workings() {
    }

    /**
     * Works an outcome out again.
     *
     * @param outcome an outcome
     * @param project the project that was checked, not changed
     * @return the steps, the margin last; empty where the outcome has no numbers
     * @throws IllegalArgumentException where the rule set of the project is unknown
     */
    public static List<Step> of(Outcome outcome, Project project) {
        List<Step> steps = new ArrayList<>();
        if (outcome.value().isEmpty() || outcome.limit().isEmpty()) {
            return steps;
        }
        Ids.find(project, String.valueOf(outcome.elementId())).ifPresent(element -> {
            if (element instanceof ApproachAid aid) {
                Projects.host(aid).flatMap(host -> laid(project, aid, host)).ifPresent(siting -> aidSteps(outcome, aid, siting, steps));
            } else if (element instanceof Obstacle obstacle) {
                surface(outcome, project, obstacle).ifPresent(steps::add);
            }
        });
        margin(outcome).ifPresent(steps::add);
        return steps;
    }

    private static Optional<Siting> laid(Project project, ApproachAid aid, ApproachHost host) {
        return new AidSubject(aid, host, ProjectRules.of(project, aid, Optional.empty())).laid().value();
    }

    private static void aidSteps(Outcome outcome, ApproachAid aid, Siting siting, List<Step> steps) {
        boolean wheels = outcome.rule().startsWith("WHEEL-");
        if (wheels || outcome.rule().startsWith("EYE-") || outcome.rule().startsWith("GP-")) {
            eyeHeight(siting).ifPresent(steps::add);
        }
        if (wheels) {
            Projects.host(aid).stream().flatMap(host -> host.getRegularGroups().stream()).filter(group -> group.getEyeToWheelM() != null)
                    .filter(group -> near(siting.eyeHeightM() - group.getEyeToWheelM(), outcome.value().getAsDouble()))
                    .findFirst().flatMap(group -> wheelClearance(siting, group)).ifPresent(steps::add);
        }
    }

    /**
     * Returns how the wheel clearance of an aeroplane group follows from the eye height.
     *
     * @param siting a layout
     * @param group  the group
     * @return the step, empty where the group has no eye path to wheel path height
     */
    public static Optional<Step> wheelClearance(Siting siting, AeroplaneGroup group) {
        return Optional.ofNullable(group.getEyeToWheelM()).map(height -> new Step(Kind.WHEEL_CLEARANCE,
                List.of(metres(siting.eyeHeightM()), metres(height), metres(siting.eyeHeightM() - height))));
    }

    /**
     * Returns how the eye height over the threshold follows from the layout.
     *
     * @param siting a layout
     * @return the step, empty where the formula does not lead to the eye height of the layout
     */
    public static Optional<Step> eyeHeight(Siting siting) {
        double lens = siting.reference().heightM();
        double sum = lens + siting.distanceM() * Angles.tanDeg(siting.lowestOnSlopeDeg());
        return near(sum, siting.eyeHeightM()) ? Optional.of(new Step(Kind.EYE_HEIGHT, List.of(metres(lens), metres(siting.distanceM()),
                Angles.format(siting.lowestOnSlopeDeg()), metres(sum)))) : Optional.empty();
    }

    /** The aid whose surface has the height of the limit at the obstacle is the one that was compared. */
    private static Optional<Step> surface(Outcome outcome, Project project, Obstacle obstacle) {
        if (!outcome.rule().equals("OBS-01")) {
            return Optional.empty();
        }
        for (ApproachAid aid : Projects.aids(project)) {
            Optional<ApproachHost> host = Projects.host(aid);
            if (host.isPresent()) {
                AidSubject subject = new AidSubject(aid, host.get(), ProjectRules.of(project, aid, Optional.empty()));
                Optional<Step> step = subject.laid().value().flatMap(Siting::surface).flatMap(plan -> surface(outcome, subject, plan,
                        obstacle));
                if (step.isPresent()) {
                    return step;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Step> surface(Outcome outcome, AidSubject subject, SurfacePlan plan, Obstacle obstacle) {
        ProtectionSurface surface = plan.geometry();
        double limit = outcome.limit().getAsDouble();
        try {
            Optional<Penetration> found = subject.frame().value().flatMap(frame -> SurveyedShape.of(obstacle, frame).compare(surface));
            if (found.isEmpty() || !near(found.get().limitM(), limit)) {
                return Optional.empty();
            }
            FramePoint point = found.get().point();
            double accuracy = obstacle.getHorizontalAccuracyM() == null ? 0 : obstacle.getHorizontalAccuracyM();
            double outward = surface.outwardM(point.alongM(), point.rightM());
            for (double distance : new double[] {outward, Math.max(0, outward - accuracy)}) {
                if (near(surface.heightAtOutwardM(distance), limit)) {
                    return Optional.of(new Step(Kind.SURFACE_HEIGHT, List.of(metres(surface.startHeightM()), metres(distance),
                            Angles.format(surface.slopeDeg()), metres(limit))));
                }
            }
        } catch (SitingException e) {
            return Optional.empty();
        }
        return Optional.empty();
    }

    /**
     * Returns how the margin follows from value and limit.
     *
     * @param outcome an outcome
     * @return the step, empty where the outcome has no margin or it is not the difference of the two
     */
    public static Optional<Step> margin(Outcome outcome) {
        if (outcome.value().isEmpty() || outcome.limit().isEmpty() || outcome.margin().isEmpty()) {
            return Optional.empty();
        }
        double value = outcome.value().getAsDouble();
        double limit = outcome.limit().getAsDouble();
        double margin = outcome.margin().getAsDouble();
        String unit = outcome.unit();
        if (Math.abs(value - limit - margin) < 1e-9) {
            return Optional.of(new Step(Kind.MARGIN_AT_LEAST, List.of(text(value, unit), text(limit, unit), signed(margin, unit))));
        }
        if (Math.abs(limit - value - margin) < 1e-9) {
            return Optional.of(new Step(Kind.MARGIN_AT_MOST, List.of(text(limit, unit), text(value, unit), signed(margin, unit))));
        }
        return Optional.empty();
    }

    private static boolean near(double one, double other) {
        return Math.abs(one - other) <= ROUNDING_M;
    }

    private static String metres(double value) {
        return text(value, "m");
    }

    private static String text(double value, String unit) {
        return number(value, unit, "%.") + suffix(unit);
    }

    private static String signed(double value, String unit) {
        return number(value, unit, "%+.") + suffix(unit);
    }

    private static String number(double value, String unit, String form) {
        int decimals = unit.isEmpty() && value == Math.rint(value) ? 0 : unit.equals("deg") ? 4 : 2;
        double rounded = Math.abs(value) < Math.pow(10, -decimals) / 2 ? 0 : value;
        return String.format(Locale.ROOT, form + decimals + "f", rounded);
    }

    private static String suffix(String unit) {
        return switch (unit) {
            case "" -> "";
            case "deg" -> "\u00b0";
            case "min" -> "\u2032";
            default -> " " + unit;
        };
    }
}
