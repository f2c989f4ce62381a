package slopewright.checks.internal.row;

import java.util.List;
import java.util.stream.IntStream;

import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Message;

/**
 * Two units of one side.
 *
 * @param inner the one nearer to the runway
 * @param outer the other
 */
record Neighbours(UnitAt inner, UnitAt outer) {

    /** Returns each unit of a side with the next one outward. */
    static List<Neighbours> of(List<UnitAt> side) {
        return IntStream.range(1, side.size()).mapToObj(outer -> new Neighbours(side.get(outer - 1), side.get(outer))).toList();
    }

    /** Returns every two units of a side. */
    static List<Neighbours> all(List<UnitAt> side) {
        return IntStream.range(1, side.size()).boxed()
                .flatMap(outer -> IntStream.range(0, outer).mapToObj(inner -> new Neighbours(side.get(inner), side.get(outer)))).toList();
    }

    /** Returns how far they stand apart, metres. */
    double spacingM() {
        return Math.abs(outer.rightM() - inner.rightM());
    }

    /** Returns how much higher the lens of the outer one stands, metres. */
    double riseM() {
        return outer.lensElevationM() - inner.lensElevationM();
    }

    /** Returns the rise outward, metres for each metre; ends the rule where both stand at one place. */
    double gradient() {
        if (spacingM() <= 0) {
            throw Stop.missing(Message.of("missing.unit-spacing", inner.name(), outer.name()));
        }
        return riseM() / spacingM();
    }
}
