package slopewright.exchange.survey;

import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

import slopewright.exchange.survey.StatedHeights.Fault;
import slopewright.messages.Message;

/** How high the ground lies at the positions of a shape, worked out of everything that its file says, as for tops. */
final class GroundHeights {

    private GroundHeights() {
    }

    /**
     * Works out the elevations of the ground.
     *
     * @param stated  what the file says
     * @param heights what is said of what it leaves open
     * @param count   number of positions
     * @return one elevation a position, metres
     */
    static double[] of(StatedHeights stated, SurveyHeights heights, int count) throws Fault {
        stated.refuseNoHeight();
        if (heights.meaning() == SurveyHeights.Meaning.ABOVE_GROUND) {
            throw new Fault(Message.of("survey-file.ground.above"));
        }
        boolean tops = heights.meaning() == SurveyHeights.Meaning.TOP;
        double[] found = tops ? below(stated, count) : open(stated, heights.meaning(), count);
        OptionalDouble top = stated.top();
        if (top.isPresent() && Arrays.stream(found).anyMatch(ground -> !(ground < top.getAsDouble()))) {
            throw new Fault(Message.said("survey-file.ground.not-below", Arrays.stream(found).max().orElseThrow(), top.getAsDouble()));
        }
        if (heights.meaning() == SurveyHeights.Meaning.AS_STATED && Arrays.stream(found).anyMatch(ground -> ground == 0)) {
            throw new Fault(Message.of("survey-file.ground.zero"));
        }
        return found;
    }

    /** Elevations that are named no closer are those of the ground. */
    private static double[] open(StatedHeights stated, SurveyHeights.Meaning meaning, int count) throws Fault {
        OptionalDouble named = stated.ground();
        boolean onlyHeight = stated.height().isPresent() && named.isEmpty() && stated.top().isEmpty();
        if (onlyHeight && meaning == SurveyHeights.Meaning.AS_STATED) {
            throw new Fault(Message.of("survey-file.ground.unclear"));
        }
        OptionalDouble ground = named.isPresent() ? named : stated.elevation();
        if (named.isPresent() && stated.elevation().isPresent()) {
            double elevation = stated.elevation().getAsDouble();
            if (!StatedHeights.isNear(elevation, named.getAsDouble()) && !isTop(stated, elevation)) {
                throw new Fault(Message.said("survey-file.ground.and-elevation", named.getAsDouble(), elevation));
            }
        }
        if (ground.isEmpty() && stated.positions().isEmpty() && stated.top().isPresent() && stated.height().isPresent()) {
            ground = OptionalDouble.of(stated.top().getAsDouble() - stated.height().getAsDouble());
        }
        if (ground.isEmpty()) {
            return stated.positions().orElseThrow(() -> new Fault(Message.of("survey-file.no-elevation")));
        }
        double level = ground.getAsDouble();
        if (stated.top().isPresent()) {
            StatedHeights.agree(ground, stated.height(), stated.top().getAsDouble());
        }
        if (stated.positions().isEmpty()) {
            return DoubleStream.generate(() -> level).limit(count).toArray();
        }
        double[] positions = stated.positions().get();
        OptionalDouble other = Arrays.stream(positions).filter(z -> !StatedHeights.isNear(z, level)).findFirst();
        if (other.isPresent()) {
            throw new Fault(Message.said("survey-file.ground.and-position", level, other.getAsDouble()));
        }
        return positions;
    }

    private static boolean isTop(StatedHeights stated, double elevation) {
        OptionalDouble top = stated.top().isPresent() ? stated.top() : StatedHeights.sum(stated.ground(), stated.height());
        return top.isPresent() && StatedHeights.isNear(top.getAsDouble(), elevation);
    }

    /** Elevations that are named no closer are those of tops, so that the ground lies a height below them. */
    private static double[] below(StatedHeights stated, int count) throws Fault {
        OptionalDouble named = stated.ground();
        if (named.isPresent()) {
            return DoubleStream.generate(named::getAsDouble).limit(count).toArray();
        }
        OptionalDouble top = stated.top().isPresent() ? stated.top() : stated.elevation();
        if (stated.height().isEmpty() || top.isEmpty() && stated.positions().isEmpty()) {
            throw new Fault(Message.of("survey-file.ground.top-only"));
        }
        double height = stated.height().getAsDouble();
        return (top.isPresent() ? DoubleStream.generate(top::getAsDouble).limit(count) : Arrays.stream(stated.positions().orElseThrow()))
                .map(elevation -> elevation - height).toArray();
    }
}
