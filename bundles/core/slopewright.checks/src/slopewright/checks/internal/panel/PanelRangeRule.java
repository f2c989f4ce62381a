package slopewright.checks.internal.panel;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.geometry.Angles;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** Panels so close together say nothing from afar. A warning: seen late they are still true. */
public final class PanelRangeRule extends AidRule {
    private static final double SEARCH_M = 100_000;
    private static final int HALVINGS = 60;

    /** Made by the service loader. */
    public PanelRangeRule() {
        super("PANEL-03", Severity.WARNING, Trait.PANELS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue range = facts.length("range-day");
        CitedValue error = facts.angle("judged-error");
        CitedValue resolution = facts.angle("resolution");
        double apart = facts.barAlongM(2) - facts.barAlongM(1);
        double read = readableM(apart, facts.slopeDeg(), error.value(), resolution.value());
        outcomes.about(facts.aid()).measured(Measure.atLeast(read, range.value(), "m")).resting(range, error, resolution)
                .saying("range", Words.degrees(error.value()), Words.m(read), Words.m(range.value())).advising("apart", Words.m(apart))
                .add();
    }

    private static double readableM(double apartM, double slopeDeg, double errorDeg, double resolutionDeg) {
        double low = 0;
        double high = SEARCH_M;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (splitDeg(middle, apartM, slopeDeg, slopeDeg + errorDeg) >= resolutionDeg) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Returns by how much the panels split for an eye on an angle, at a range from the front panels. */
    private static double splitDeg(double rangeM, double apartM, double slopeDeg, double eyeDeg) {
        double height = (rangeM + apartM) * Angles.tanDeg(eyeDeg);
        return Math.abs(eyeDeg - Angles.elevationDeg(height - apartM * Angles.tanDeg(slopeDeg), rangeM));
    }
}
