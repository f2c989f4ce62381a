package slopewright.checks.internal.panel;

import java.util.List;
import java.util.Set;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Words;
import slopewright.geometry.Angles;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** Panels so close together say nothing from afar. */
public final class PanelRangeRule extends AidRule {

    private static final double SEARCH_M = 100_000;

    /** Made by the service loader. */
    public PanelRangeRule() {
        super("PANEL-03", Severity.WARNING, Trait.PANELS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector findings) {
        CitedValue range = facts.length("range-day");
        CitedValue error = facts.angle("judged-error");
        CitedValue resolution = facts.angle("resolution");
        double slope = facts.laid().slopeDeg();
        double apart = facts.barAlongM(2) - facts.barAlongM(1);
        double low = 0;
        double high = SEARCH_M;
        for (int i = 0; i < 60; i++) {
            double middle = (low + high) / 2;
            if (splitDeg(middle, apart, slope, slope + error.value()) >= resolution.value()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        compare(findings, facts.aid(), Measure.atLeast(low, range.value(), "m"),
                OutcomeCollector.weakest(List.of(range.citation(), error.citation(), resolution.citation())), "An error of "
                        + Words.degrees(error.value())
                        + " can be read up to " + Words.m(low) + "; the published range is " + Words.m(range.value()) + ".",
                "Set the front and rear panels farther apart than " + Words.m(apart) + ", or state the shorter range.");
    }

    /** Returns by how much the panels split for an eye on an angle, at a range from the front panels. */
    private static double splitDeg(double rangeM, double apartM, double slopeDeg, double eyeDeg) {
        double height = (rangeM + apartM) * Angles.tanDeg(eyeDeg);
        return Math.abs(eyeDeg - Angles.elevationDeg(height - apartM * Angles.tanDeg(slopeDeg), rangeM));
    }
}
