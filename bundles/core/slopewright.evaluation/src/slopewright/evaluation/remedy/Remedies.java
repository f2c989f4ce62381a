package slopewright.evaluation.remedy;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoublePredicate;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.obstacles.ObstacleComparison;
import slopewright.evaluation.obstacles.ObstacleField;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.geometry.ProtectionSurface;
import slopewright.siting.Families;
import slopewright.siting.Input;
import slopewright.siting.Siting;
import slopewright.siting.SitingRequest;
import slopewright.siting.UnitPlan;
import slopewright.standards.RuleSet;

/**
 * Computes what cures the penetrations of an obstacle surface (ICAO base 5.3.5.45, EASA CS-ADR-DSN.M.655 (d)). Each remedy is the
 * smallest change that leaves nothing above the surface; where the penetration does not fall steadily with the change, the smallest
 * one found in fine steps.
 */
public final class Remedies {

    private static final double GREATEST_SLOPE_GAIN_DEG = 6;
    private static final double GREATEST_MOVE_M = 3000;
    private static final double ANGLE_STEP_DEG = 0.05;
    private static final double LENGTH_STEP_M = 10;
    private static final double LEAST_BEAM_DEG = 1;
    private static final int HALVINGS = 40;

    private final Siting laid;
    private final SitingRequest request;
    private final RuleSet rules;
    private final ProtectionSurface surface;
    private final Surroundings surroundings;

    private Remedies(Siting laid, SitingRequest request, RuleSet rules, Surroundings surroundings) {
        this.laid = laid;
        this.request = request;
        this.rules = rules;
        this.surroundings = surroundings;
        surface = laid.surface().orElseThrow(() -> new IllegalArgumentException("the layout has no obstacle surface")).geometry();
    }

    /**
     * Computes the remedies of a layout.
     *
     * @param evaluation the evaluation of an aid as it stands; what something named shields does not count
     * @return one remedy of each kind in the order of the published list, those that do not help too; empty where nothing penetrates, or
     *         nobody knows because there is no layout, no obstacle surface or no frame
     */
    public static List<Remedy> of(AidEvaluation evaluation) {
        if (evaluation.obstacles().value().isEmpty() || evaluation.request().value().isEmpty()) {
            return List.of();
        }
        Remedies remedies = new Remedies(evaluation.siting().orThrow(), evaluation.request().orThrow(), evaluation.rules(),
                evaluation.surroundings().orThrow());
        if (remedies.worstM(remedies.surface) <= 0) {
            return List.of();
        }
        return List.of(remedies.raiseSlope(), remedies.narrowBeam(), remedies.turnAxis(), remedies.displaceThreshold(),
                remedies.moveByCrossingHeight(), remedies.moveUntilClear());
    }

    private double worstM(ProtectionSurface tried) {
        return surroundings.compare(tried).governingUnshielded().map(one -> -one.marginM()).orElse(Double.NEGATIVE_INFINITY);
    }

    private boolean isClear(ProtectionSurface tried) {
        return surroundings.isClear(tried);
    }

    /** Returns the smallest change in (0, most] after which nothing penetrates: the first in steps, then refined between two steps. */
    private static OptionalDouble smallest(DoublePredicate clearAfter, double step, double most) {
        double before = 0;
        for (int i = 1; i * step <= most + step / 2; i++) {
            double change = Math.min(i * step, most);
            if (clearAfter.test(change)) {
                return OptionalDouble.of(refined(clearAfter, before, change));
            }
            before = change;
        }
        return OptionalDouble.empty();
    }

    private static double refined(DoublePredicate clearAfter, double tooLittle, double enough) {
        double low = tooLittle;
        double high = enough;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (clearAfter.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private Remedy raiseSlope() {
        OptionalDouble gain = smallest(this::isClearAfterRaising, ANGLE_STEP_DEG, GREATEST_SLOPE_GAIN_DEG);
        OptionalDouble slope = gain.isPresent() ? OptionalDouble.of(laid.slopeDeg() + gain.getAsDouble()) : OptionalDouble.empty();
        return new Remedy(Remedy.Kind.RAISE_SLOPE, slope, "deg", slope.isPresent()
                ? String.format(Locale.ROOT, "raise the slope and all settings by %.2f° to %.2f°, the crossing height kept",
                gain.getAsDouble(),
                        slope.getAsDouble())
                : "raising the slope does not clear it");
    }

    /** All settings go up by the same angle and the indicator moves so that the eye height over the threshold stays. */
    private boolean isClearAfterRaising(double byDeg) {
        double lens = laid.reference().heightM();
        double angle = laid.reference().alongM() > 0 ? Math.toDegrees(Math.atan((laid.mehtM() - lens) / laid.reference().alongM()))
                : 0;
        double distance = (laid.mehtM() - lens) / Angles.tanDeg(angle + byDeg);
        double move = distance - laid.reference().alongM();
        List<UnitPlan> raised = laid.units().stream().map(unit -> unit.raised(byDeg)).map(unit -> unit.at(new FramePoint(
                unit.place().alongM() + move, unit.place().rightM(), unit.place().heightM()))).toList();
        SitingRequest steeper = request.toBuilder().set(Input.SLOPE, laid.slopeDeg() + byDeg).build();
        Siting after = Families.get(laid.family()).assess(steeper, rules, raised, laid.unshifted().plus(distance - laid.distanceM()));
        return after.surface().filter(plan -> isClear(plan.geometry())).isPresent();
    }

    private Remedy turnAxis() {
        double limit = rules.find("obstacle.axis-turn-limit-deg").map(value -> value.value()).orElse(0.0);
        if (limit == 0) {
            return new Remedy(Remedy.Kind.TURN_AXIS, OptionalDouble.empty(), "deg", "the rule set gives no turn of the axis");
        }
        double now = surface.axisTurnDeg();
        OptionalDouble right = smallest(by -> isClear(surface.withAxisTurnDeg(now + by)), ANGLE_STEP_DEG, limit - now);
        OptionalDouble left = smallest(by -> isClear(surface.withAxisTurnDeg(now - by)), ANGLE_STEP_DEG, limit + now);
        OptionalDouble turn = right;
        if (left.isPresent() && (right.isEmpty() || left.getAsDouble() < right.getAsDouble())) {
            turn = OptionalDouble.of(-left.getAsDouble());
        }
        return new Remedy(Remedy.Kind.TURN_AXIS, turn, "deg", turn.isPresent()
                ? String.format(Locale.ROOT, "turn the axis and the surface by %.2f° %s seen from above", Math.abs(turn.getAsDouble()),
                        turn.getAsDouble() > 0 ? "clockwise" : "anticlockwise")
                : String.format(Locale.ROOT, "turning the axis by up to %.0f° does not clear it", limit));
    }

    private Remedy narrowBeam() {
        double least = Double.POSITIVE_INFINITY;
        boolean bothSides = false;
        boolean leftSide = false;
        boolean any = false;
        for (ObstacleComparison one : surroundings.compare(surface).inside()) {
            if (one.isUnshieldedPenetration()) {
                double lowest = Double.POSITIVE_INFINITY;
                double highest = Double.NEGATIVE_INFINITY;
                for (FramePoint point : points(one)) {
                    double azimuth = azimuthDeg(point);
                    double blur = Math.toDegrees(Math.atan2(accuracyM(one),
                            Math.max(1, point.planDistanceM(laid.reference()))));
                    lowest = Math.min(lowest, azimuth - blur);
                    highest = Math.max(highest, azimuth + blur);
                }
                boolean left = highest < 0;
                bothSides |= lowest <= 0 && highest >= 0 || any && left != leftSide;
                leftSide = left;
                any = true;
                least = Math.min(least, left ? -highest : lowest);
            }
        }
        boolean helps = any && !bothSides && least >= LEAST_BEAM_DEG;
        return new Remedy(Remedy.Kind.NARROW_BEAM, helps ? OptionalDouble.of(least) : OptionalDouble.empty(), "deg", helps
                ? String.format(Locale.ROOT, "narrow the beam to less than %.1f° %s of the axis, seen in the landing direction", least,
                        leftSide ? "left" : "right")
                : "narrowing the beam does not help: what penetrates stands too near the axis or on both sides");
    }

    private List<FramePoint> points(ObstacleComparison one) {
        return placed(one).map(place -> place.shape().points()).orElse(List.of(one.worst().point()));
    }

    private double accuracyM(ObstacleComparison one) {
        return placed(one).map(place -> place.shape().horizontalAccuracyM()).orElse(0.0);
    }

    private Optional<ObstacleField.Placed> placed(ObstacleComparison one) {
        return surroundings.obstacles().placed().stream().filter(place -> place.obstacle() == one.element()).findFirst();
    }

    /** Returns the azimuth of a point from the indicator, degrees to the right of the axis seen in the landing direction. */
    private double azimuthDeg(FramePoint point) {
        ProtectionSurface fromIndicator = new ProtectionSurface(laid.reference().alongM(), 0, 0, 0, surface.lengthM(), 0,
                surface.axisTurnDeg());
        return Math.toDegrees(Math.atan2(fromIndicator.offsetM(point.alongM(), point.rightM()),
                fromIndicator.outwardM(point.alongM(), point.rightM())));
    }

    private Remedy displaceThreshold() {
        OptionalDouble by = smallest(move -> isClear(surface.movedM(move).raisedM(riseM(move))), LENGTH_STEP_M,
                GREATEST_MOVE_M);
        String level = request.ground().isPresent() ? "" : ", the new threshold taken at the level of the old one";
        return new Remedy(Remedy.Kind.DISPLACE_THRESHOLD, by, "m", by.isPresent()
                ? String.format(Locale.ROOT, "%s by %.0f m%s", request.atHelipad() ? "move the FATO" : "displace the threshold",
                Math.ceil(by.getAsDouble()),
                        level)
                : "displacing the threshold does not clear it");
    }

    private double riseM(double alongM) {
        return request.ground().filter(ground -> ground.covers(alongM)).map(ground -> ground.heightAt(alongM)).orElse(0.0);
    }

    private Remedy moveByCrossingHeight() {
        double excess = worstM(surface);
        double move = excess / Angles.tanDeg(laid.lowestOnSlopeDeg());
        return new Remedy(Remedy.Kind.MOVE_UPWIND_BY_CROSSING_HEIGHT, OptionalDouble.of(move), "m",
                String.format(Locale.ROOT, "move the indicator %.0f m upwind, so that the crossing height rises by the penetration of %.2f"
                + " m",
                        Math.ceil(move), excess));
    }

    private Remedy moveUntilClear() {
        OptionalDouble by = smallest(move -> isClear(surface.movedM(move)), LENGTH_STEP_M, GREATEST_MOVE_M);
        return new Remedy(Remedy.Kind.MOVE_UPWIND_UNTIL_CLEAR, by, "m", by.isPresent()
                ? String.format(Locale.ROOT, "move the indicator and its surface %.0f m upwind, until nothing penetrates",
                Math.ceil(by.getAsDouble()))
                : "moving the indicator and its surface upwind does not clear it");
    }
}
