package slopewright.checks.internal.bar;

import java.util.ArrayList;
import java.util.List;

import slopewright.checks.internal.AidFacts;
import slopewright.geometry.Angles;

/** The distances between bars one behind the other. */
final class BarSpacings {

    private BarSpacings() {
    }

    /** Returns the mean places of the bars, near to far. */
    static List<Double> placesM(AidFacts facts) {
        int bars = facts.indicator().bars().size();
        List<Double> places = new ArrayList<>();
        for (int bar = 1; bar <= bars; bar++) {
            places.add(facts.barAlongM(bar));
        }
        return places;
    }

    /** Returns the range beyond which an eye of a given resolution sees two bars as one. */
    static double splitRangeM(double spacingM, double slopeDeg, double resolutionDeg) {
        return spacingM * Math.sin(Math.toRadians(slopeDeg)) / Angles.tanDeg(resolutionDeg);
    }
}
