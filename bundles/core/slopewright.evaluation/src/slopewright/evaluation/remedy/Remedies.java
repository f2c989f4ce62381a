package slopewright.evaluation.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.LensLevel;
import slopewright.evaluation.Proposals;
import slopewright.evaluation.UnitGround;
import slopewright.evaluation.obstacles.SurfaceComparison;
import slopewright.evaluation.obstacles.Surroundings;
import slopewright.geometry.Angles;
import slopewright.geometry.ProtectionSurface;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.RunwayEnd;
import slopewright.siting.Families;
import slopewright.siting.Input;
import slopewright.siting.Siting;
import slopewright.siting.SitingException;
import slopewright.siting.SitingRequest;
import slopewright.standards.CitedValue;
import slopewright.standards.RemedyKind;
import slopewright.standards.RemedyTable;
import slopewright.standards.RuleSet;

/**
 * Computes what cures the penetrations of an obstacle surface: those remedies that the edition of the rule set lists. Each is the smallest
 * change that leaves nothing above the surface; where the penetration does not fall steadily with the change, the smallest one found in
 * fine steps. It is offered only after it was carried out on a copy, and the copy was evaluated.
 */
public final class Remedies {
    private static final double GREATEST_SLOPE_GAIN_DEG = 6;
    private static final double GREATEST_MOVE_M = 3000;
    private static final double ANGLE_STEP_DEG = 0.05;
    private static final double LENGTH_STEP_M = 10;
    private static final double SET_OUT_DEG = 0.01;
    private static final double SET_OUT_M = 1;
    /** How many more steps of setting out are tried where rounding or the ground leave something above the surface. */
    private static final int MOST_MORE = 10;
    /** How finely a change is refined, degrees or metres: the stored resolution of an angle. */
    private static final double REFINED_TO = 1e-6;
    private static final double ROUNDING = 1e-9;

    private final AidEvaluation evaluation;
    private final Siting laid;
    private final SitingRequest request;
    private final RuleSet rules;
    private final ProtectionSurface surface;
    private final SurfaceComparison compared;
    private final Surroundings surroundings;

    private Remedies(AidEvaluation evaluation) {
        this.evaluation = evaluation;
        laid = evaluation.siting().orThrow();
        request = evaluation.request().orThrow();
        rules = evaluation.rules();
        compared = evaluation.obstacles().orThrow();
        surface = compared.surface();
        surroundings = evaluation.surroundings().orThrow();
    }

    /**
     * Computes the remedies of a layout.
     *
     * @param evaluation the evaluation of an aid as it stands; what something named shields does not count
     * @return one remedy of each kind that the rule set lists, in its order, those that do not help too; empty where nothing penetrates, or
     *         nobody knows because there is no layout, no obstacle surface or no frame
     */
    public static List<Remedy> of(AidEvaluation evaluation) {
        boolean penetrated = evaluation.obstacles().value().filter(SurfaceComparison::isPenetrated).isPresent();
        if (!penetrated || evaluation.request().value().isEmpty()) {
            return List.of();
        }
        Remedies remedies = new Remedies(evaluation);
        List<RemedyKind> kinds = evaluation.rules().remedies().map(RemedyTable::kinds).orElse(List.of());
        List<Remedy> found = new ArrayList<>();
        for (RemedyKind kind : kinds) {
            if (kind != RemedyKind.DISPLACE_THRESHOLD || evaluation.host() instanceof RunwayEnd) {
                found.add(remedies.of(kind));
            }
        }
        return found;
    }

    private Remedy of(RemedyKind kind) {
        return switch (kind) {
            case RAISE_SLOPE -> raiseSlope();
            case NARROW_BEAM -> new NarrowBeam(laid, surface, compared, surroundings).remedy();
            case TURN_AXIS -> turnAxis();
            case DISPLACE_THRESHOLD -> displaceThreshold();
            case MOVE_UPWIND_BY_CROSSING_HEIGHT -> moveByCrossingHeight();
            default -> moveUntilClear();
        };
    }

    private boolean isClear(ProtectionSurface tried) {
        return surroundings.isClear(tried);
    }

    /** Carries a change out on a copy and tells whether nothing stands above its surface then. */
    private boolean isClearAfter(BiConsumer<ApproachAid, Double> change, double by) {
        try {
            AidEvaluation after = evaluation.trial(copy -> change.accept(copy, by));
            return after.siting().value().flatMap(Siting::surface)
                    .filter(plan -> after.surroundings().orThrow().isClear(plan.geometry())).isPresent();
        } catch (SitingException | IllegalArgumentException e) {
            return false;
        }
    }

    /** Returns the first of some steps of setting out after which a change that is carried out leaves nothing above the surface. */
    private OptionalDouble firstClear(double from, double step, BiConsumer<ApproachAid, Double> change) {
        for (int more = 0; more <= MOST_MORE; more++) {
            double by = Math.round((from + more * step) / Math.abs(step)) * Math.abs(step);
            if (isClearAfter(change, by)) {
                return OptionalDouble.of(by);
            }
        }
        return OptionalDouble.empty();
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
        while (high - low > REFINED_TO) {
            double middle = (low + high) / 2;
            if (clearAfter.test(middle)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    private static double up(double value, double step) {
        return Math.ceil(value / step - ROUNDING) * step;
    }

    private Remedy raiseSlope() {
        LensLevel level = evaluation.lensLevel().orThrow();
        DoublePredicate clear = by -> clearAtSlope(level, laid.slopeDeg() + by);
        OptionalDouble gain = smallest(clear, ANGLE_STEP_DEG, GREATEST_SLOPE_GAIN_DEG);
        if (gain.isPresent()) {
            double slope = laid.slopeDeg() + gain.getAsDouble();
            OptionalDouble step = firstClear(up(slope, SET_OUT_DEG), SET_OUT_DEG, (copy, to) -> Proposals.layOutForSlope(copy, to, rules));
            if (step.isPresent()) {
                return Remedy.of(RemedyKind.RAISE_SLOPE, slope, step.getAsDouble(), Message.of("remedy.raise-slope",
                        Words.degrees(step.getAsDouble() - laid.slopeDeg()), Words.degrees(step.getAsDouble())));
            }
        }
        return Remedy.none(RemedyKind.RAISE_SLOPE, Message.of("remedy.raise-slope-none"));
    }

    private boolean clearAtSlope(LensLevel level, double slopeDeg) {
        try {
            SitingRequest steeper = level.in(request).toBuilder().set(Input.SLOPE, slopeDeg).build();
            return Families.site(laid.family(), steeper, rules).surface().filter(plan -> isClear(plan.geometry())).isPresent();
        } catch (SitingException e) {
            return false;
        }
    }

    private Remedy turnAxis() {
        double limit = rules.find("obstacle.axis-turn-limit-deg").map(CitedValue::value).orElse(0.0);
        if (limit == 0) {
            return Remedy.none(RemedyKind.TURN_AXIS, Message.of("remedy.turn-axis-no-limit"));
        }
        double now = surface.axisTurnDeg();
        OptionalDouble right = turn(1, limit - now);
        OptionalDouble left = turn(-1, limit + now);
        boolean toRight = right.isPresent() && (left.isEmpty() || right.getAsDouble() <= left.getAsDouble());
        if (!toRight && left.isEmpty()) {
            return Remedy.none(RemedyKind.TURN_AXIS, Message.of("remedy.turn-axis-none", Words.wholeDegrees(limit)));
        }
        int sign = toRight ? 1 : -1;
        double amount = (toRight ? right : left).getAsDouble();
        OptionalDouble step = firstClear(sign * (up(Math.abs(now + sign * amount), SET_OUT_DEG) * Math.signum(now + sign * amount)
                - now) * sign, sign * SET_OUT_DEG, RemedyChange::turnAxis);
        if (step.isEmpty() || Math.abs(now + step.getAsDouble()) > limit + ROUNDING) {
            return Remedy.none(RemedyKind.TURN_AXIS, Message.of("remedy.turn-axis-none", Words.wholeDegrees(limit)));
        }
        return Remedy.of(RemedyKind.TURN_AXIS, sign * amount, step.getAsDouble(), Message.of("remedy.turn-axis",
                Words.degrees(Math.abs(step.getAsDouble())), Words.term(toRight ? "clockwise" : "anticlockwise")));
    }

    private OptionalDouble turn(int sign, double most) {
        return smallest(by -> isClear(surface.withAxisTurnDeg(surface.axisTurnDeg() + sign * by)), ANGLE_STEP_DEG, most);
    }

    private Remedy displaceThreshold() {
        UnitGround ground = UnitGround.of(evaluation.aid());
        DoubleUnaryOperator rise = by -> ground.riseM(0, by);
        OptionalDouble by = smallest(move -> isClear(surface.movedM(move).raisedM(rise.applyAsDouble(move))), LENGTH_STEP_M,
                GREATEST_MOVE_M);
        return moved(RemedyKind.DISPLACE_THRESHOLD, by, RemedyChange::displace,
                ground.isKnown() ? "remedy.displace" : "remedy.displace-level", Message.of("remedy.displace-none"));
    }

    private Remedy moveUntilClear() {
        OptionalDouble by = smallest(move -> isClear(surface.movedM(move)), LENGTH_STEP_M, GREATEST_MOVE_M);
        return moved(RemedyKind.MOVE_UPWIND_UNTIL_CLEAR, by, (copy, step) -> RemedyChange.moveWithSurface(copy, step, laid.distanceM()),
                "remedy.move", Message.of("remedy.move-none"));
    }

    private Remedy moveByCrossingHeight() {
        double excess = compared.governingUnshielded().orElseThrow().worst().excessM();
        double by = excess / Angles.tanDeg(laid.lowestOnSlopeDeg());
        return moved(RemedyKind.MOVE_UPWIND_BY_CROSSING_HEIGHT, OptionalDouble.of(by), RemedyChange::move, "remedy.move-by-height",
                Message.of("remedy.move-by-height-none", Words.wholeM(up(by, SET_OUT_M)), Words.margin(excess)));
    }

    private Remedy moved(RemedyKind kind, OptionalDouble by, BiConsumer<ApproachAid, Double> change, String key, Message otherwise) {
        if (by.isPresent()) {
            OptionalDouble step = firstClear(up(by.getAsDouble(), SET_OUT_M), SET_OUT_M, change);
            if (step.isPresent()) {
                return Remedy.of(kind, by.getAsDouble(), step.getAsDouble(), Message.of(key, Words.wholeM(step.getAsDouble())));
            }
        }
        return Remedy.none(kind, otherwise);
    }
}
