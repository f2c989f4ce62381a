package slopewright.exchange.survey;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.exchange.survey.StatedHeights.Fault;
import slopewright.messages.Message;

/**
 * How high a surveyed thing stands, worked out of everything that its file says. Elevations of top and ground and height above the ground
 * are reconciled, elevation = ground + height, or the shape is refused; nothing that is stated is left out, and where rounded numbers
 * differ a little the higher top counts.
 *
 * @param topM       elevation of the top, metres
 * @param positionsM elevation of the top at each position, metres; empty where the top holds for all of them
 */
record TopHeights(double topM, Optional<double[]> positionsM) {

    private static final double SAME_M = 1e-3;

    /** Works out the top of an obstacle. */
    static TopHeights of(StatedHeights stated, SurveyHeights heights) throws Fault {
        stated.refuseNoHeight();
        TopHeights found = switch (heights.meaning()) {
            case ABOVE_GROUND -> aboveGround(stated, heights.groundM());
            case GROUND -> onGround(stated);
            case TOP -> atTop(stated);
            case AS_STATED -> asStated(stated);
        };
        refuseBelow(found.topM, stated.ground());
        return found;
    }

    private static TopHeights asStated(StatedHeights stated) throws Fault {
        OptionalDouble open = stated.elevation().isPresent() ? stated.elevation() : stated.highest();
        if (stated.height().isPresent() && stated.top().isEmpty() && stated.ground().isEmpty() && open.isPresent()) {
            double elevation = open.getAsDouble();
            double height = stated.height().getAsDouble();
            throw new Fault(Message.said("survey-file.top.unclear", elevation, height, StatedHeights.rounded(elevation + height),
                    StatedHeights.rounded(elevation - height)));
        }
        TopHeights found = atTop(stated);
        if (found.topM == 0 || found.positionsM.isPresent() && Arrays.stream(found.positionsM.get()).anyMatch(z -> z == 0)) {
            throw new Fault(Message.said("survey-file.top.zero", "--heights top", "--heights ground, above-ground"));
        }
        return found;
    }

    /** Elevations that are named no closer are those of the top, unless they are that of the ground. */
    private static TopHeights atTop(StatedHeights stated) throws Fault {
        OptionalDouble sum = StatedHeights.sum(stated.ground(), stated.height());
        OptionalDouble stand = firstOf(stated.top(), sum, stated.elevation(), stated.highest());
        if (stand.isEmpty()) {
            throw new Fault(Message.of(stated.height().isEmpty() ? "survey-file.top.missing" : "survey-file.top.no-ground"));
        }
        StatedHeights.agree(stated.ground(), stated.height(), stand.getAsDouble());
        double top = Math.max(stand.getAsDouble(), sum.orElse(stand.getAsDouble()));
        if (stated.elevation().isPresent() && !fits(stated, stated.elevation().getAsDouble(), top)) {
            throw new Fault(Message.said("survey-file.top.neither", stated.elevation().getAsDouble(), top));
        }
        boolean higher = stated.elevation().isPresent() && StatedHeights.isNear(stated.elevation().getAsDouble(), top);
        top = higher ? Math.max(top, stated.elevation().getAsDouble()) : top;
        if (stated.highest().orElse(top) > top + SAME_M) {
            throw new Fault(Message.said("survey-file.top.position", stated.highest().getAsDouble(), top));
        }
        return new TopHeights(top, ownTops(stated.positions(), top));
    }

    /** Returns whether an elevation is that of the top, or of the ground as far as that is known. */
    private static boolean fits(StatedHeights stated, double elevation, double top) {
        if (StatedHeights.isNear(elevation, top)) {
            return true;
        }
        OptionalDouble ground = stated.ground().isPresent() || stated.height().isEmpty() ? stated.ground()
                : OptionalDouble.of(top - stated.height().getAsDouble());
        return ground.isPresent() ? StatedHeights.isNear(elevation, ground.getAsDouble()) : elevation < top;
    }

    private static TopHeights onGround(StatedHeights stated) throws Fault {
        OptionalDouble ground = firstOf(stated.ground(), stated.elevation(), stated.highest());
        if (stated.elevation().isPresent() && !StatedHeights.isNear(ground.getAsDouble(), stated.elevation().getAsDouble())) {
            throw new Fault(Message.said("survey-file.top.two-grounds", ground.getAsDouble(), stated.elevation().getAsDouble()));
        }
        OptionalDouble sum = StatedHeights.sum(ground, stated.height());
        OptionalDouble stand = firstOf(stated.top(), sum);
        if (stand.isEmpty()) {
            throw new Fault(Message.of(stated.height().isPresent() ? "survey-file.top.no-ground-at-all"
                    : "survey-file.top.nothing"));
        }
        StatedHeights.agree(ground, stated.height(), stand.getAsDouble());
        double top = Math.max(stand.getAsDouble(), sum.orElse(stand.getAsDouble()));
        refuseBelow(top, ground);
        refuseBelow(top, stated.highest());
        boolean sloping = stated.top().isEmpty() && stated.ground().isEmpty() && stated.elevation().isEmpty();
        return new TopHeights(top, sloping ? ownTops(raised(stated.positions(), stated.height().getAsDouble()), top) : Optional.empty());
    }

    private static TopHeights aboveGround(StatedHeights stated, OptionalDouble usualGroundM) throws Fault {
        OptionalDouble ground = firstOf(stated.ground(), usualGroundM);
        OptionalDouble height = firstOf(stated.height(), stated.elevation(), stated.highest());
        if (ground.isEmpty() || height.isEmpty()) {
            throw new Fault(Message.of(height.isEmpty() ? "survey-file.top.height-missing" : "survey-file.top.ground-or-flag"));
        }
        double raise = height.getAsDouble();
        for (OptionalDouble same : new OptionalDouble[] {stated.elevation(), stated.highest()}) {
            if (same.isPresent() && !StatedHeights.isNear(same.getAsDouble(), raise)) {
                throw new Fault(Message.said("survey-file.top.two-heights", raise, same.getAsDouble()));
            }
        }
        if (!(raise > 0) || stated.positions().isPresent() && Arrays.stream(stated.positions().get()).anyMatch(z -> !(z > 0))) {
            throw new Fault(Message.of("survey-file.top.no-height"));
        }
        double sum = ground.getAsDouble() + raise;
        StatedHeights.agree(ground, height, stated.top().orElse(sum));
        double top = Math.max(stated.top().orElse(sum), sum);
        return new TopHeights(top, ownTops(raised(stated.positions(), ground.getAsDouble()), top));
    }

    /** The positions carry tops of their own where the highest of them is the top and they are not all alike. */
    private static Optional<double[]> ownTops(Optional<double[]> positions, double top) {
        return positions.filter(all -> Math.abs(Arrays.stream(all).max().orElseThrow() - top) <= SAME_M
                && Arrays.stream(all).anyMatch(z -> Math.abs(z - top) > SAME_M));
    }

    private static Optional<double[]> raised(Optional<double[]> positions, double byM) {
        return positions.map(all -> Arrays.stream(all).map(z -> z + byM).toArray());
    }

    private static OptionalDouble firstOf(OptionalDouble... candidates) {
        return Arrays.stream(candidates).filter(OptionalDouble::isPresent).findFirst().orElseGet(OptionalDouble::empty);
    }

    private static void refuseBelow(double top, OptionalDouble ground) throws Fault {
        if (ground.isPresent() && !(top > ground.getAsDouble() + SAME_M)) {
            throw new Fault(Message.said("survey-file.top.not-above", top, ground.getAsDouble()));
        }
    }
}
