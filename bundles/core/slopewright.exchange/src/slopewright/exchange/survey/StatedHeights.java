package slopewright.exchange.survey;

import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalDouble;

import slopewright.messages.Message;
import slopewright.messages.Reasoned;

/**
 * What a file says of the heights of one shape, metres.
 *
 * @param top       elevation of the top
 * @param elevation an elevation that is named no closer
 * @param height    height above the ground
 * @param ground    elevation of the ground
 * @param positions the third numbers of the positions; empty where one has none
 */
record StatedHeights(OptionalDouble top, OptionalDouble elevation, OptionalDouble height, OptionalDouble ground,
        Optional<double[]> positions) {

    /** Two of a sum of three numbers, each rounded to the decimetre, may differ by so much. */
    private static final double ROUNDING_M = 0.15;

    /** What cannot be reconciled; the message says what and what to do. */
    static final class Fault extends Exception implements Reasoned {

        private static final long serialVersionUID = 1L;

        private final transient Message reason;

        Fault(Message reason) {
            this.reason = reason;
        }

        @Override
        public Message reason() {
            return reason;
        }
    }

    /** Returns the highest third number. */
    OptionalDouble highest() {
        return positions.map(all -> Arrays.stream(all).max()).orElseGet(OptionalDouble::empty);
    }

    /** Returns ground and height together, empty where one of them is not known. */
    static OptionalDouble sum(OptionalDouble ground, OptionalDouble height) {
        return ground.isPresent() && height.isPresent() ? OptionalDouble.of(ground.getAsDouble() + height.getAsDouble())
                : OptionalDouble.empty();
    }

    static boolean isNear(double first, double second) {
        return Math.abs(first - second) <= ROUNDING_M;
    }

    static double rounded(double metres) {
        return Math.round(metres * 1000) / 1000.0;
    }

    /** Refuses a ground and a height that do not make a top. */
    static void agree(OptionalDouble ground, OptionalDouble height, double top) throws Fault {
        OptionalDouble sum = sum(ground, height);
        if (sum.isPresent() && !isNear(sum.getAsDouble(), top)) {
            throw new Fault(Message.said("survey-file.heights.sum", top, ground.getAsDouble(), height.getAsDouble(),
                    rounded(sum.getAsDouble())));
        }
    }

    /** Refuses a height that raises nothing. */
    void refuseNoHeight() throws Fault {
        if (height.isPresent() && !(height.getAsDouble() > 0)) {
            throw new Fault(Message.said("survey-file.heights.none", height.getAsDouble()));
        }
    }
}
