package slopewright.checks.internal.eye;

import java.util.List;

import slopewright.geometry.Angles;
import slopewright.geometry.FramePoint;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.siting.Siting;

/** How the minimum eye height over the threshold of a layout came about. */
final class MinimumEyeHeight {
    private static final FramePoint ORIGIN = new FramePoint(0, 0, 0);
    private static final double SAME_M = 1e-6;

    private MinimumEyeHeight() {
    }

    /** Returns the step from the unit that bounds the signal to the height; none where no single unit gives it. */
    static List<Message> steps(Siting laid) {
        double tan = Angles.tanDeg(laid.lowestOnSlopeDeg());
        return laid.units().stream()
                .filter(unit -> Math.abs(unit.place().heightM() + unit.axisDistanceM(ORIGIN) * tan - laid.mehtM()) < SAME_M).findFirst()
                .map(unit -> List.of(Message.of("step.meht", Words.m(unit.place().heightM()), Words.m(unit.axisDistanceM(ORIGIN)),
                        Words.deg(laid.lowestOnSlopeDeg()), Words.m(laid.mehtM())))).orElse(List.of());
    }
}
