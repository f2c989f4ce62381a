package slopewright.checks.internal.bar;

import java.util.List;
import java.util.stream.IntStream;

import slopewright.checks.internal.AidFacts;
import slopewright.geometry.Angles;

/**
 * Two bars of which the second follows the first along the runway in the order of the family.
 *
 * @param near number of the first, from 1
 * @param far  number of the second
 * @param nearM mean place of the first, metres beyond the threshold
 * @param farM  mean place of the second
 */
record BarPair(int near, int far, double nearM, double farM) {

    /** Returns each bar with the next one; ends the rule where a bar has no units. */
    static List<BarPair> of(AidFacts facts) {
        return IntStream.range(1, facts.indicator().bars().size())
                .mapToObj(near -> new BarPair(near, near + 1, facts.barAlongM(near), facts.barAlongM(near + 1))).toList();
    }

    /** Returns how far the second stands beyond the first, metres; negative where it stands before it. */
    double spacingM() {
        return farM - nearM;
    }

    /** Returns the range beyond which an eye of a given resolution sees both as one, metres. */
    double splitRangeM(double slopeDeg, double resolutionDeg) {
        return spacingM() * Math.sin(Math.toRadians(slopeDeg)) / Angles.tanDeg(resolutionDeg);
    }
}
