package slopewright.checks.internal.row;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.geometry.Angles;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * Neighbouring units differ by what makes the sectors, and the settings fall from the runway outward. Severity fail: in another order,
 * or by another step, the pattern means another slope.
 */
public final class RowDifferencesRule extends AidRule {

    /** Made by the service loader. */
    public RowDifferencesRule() {
        super("ROW-08", Severity.FAIL, Trait.ROW);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue accuracy = facts.value("setting-accuracy-min");
        RowSettings wanted = RowSettings.of(facts);
        for (List<UnitAt> side : facts.sides()) {
            List<Neighbours> neighbours = Neighbours.of(side);
            for (int i = 0; i < neighbours.size(); i++) {
                Neighbours pair = neighbours.get(i);
                double wantedMin = Angles.degToMinutes(wanted.deg(i, side.size()) - wanted.deg(i + 1, side.size()));
                guarded(pair.outer().unit(), outcomes, () -> compare(pair, wantedMin, wanted, accuracy, outcomes));
            }
        }
    }

    /** A tolerance that is wider than the step never lets a reversed order pass. */
    private static void compare(Neighbours pair, double wantedMin, RowSettings wanted, CitedValue accuracy, OutcomeCollector outcomes) {
        double fallMin = Angles.degToMinutes(pair.inner().settingDeg() - pair.outer().settingDeg());
        OutcomeCollector.Entry entry = outcomes.about(pair.outer().unit()).citing(wanted.citations()).resting(accuracy);
        if (fallMin <= 0) {
            entry.met(false).saying("reversed", pair.inner().name(), Words.deg(pair.inner().settingDeg()), pair.outer().name(),
                    Words.deg(pair.outer().settingDeg())).advising("exchange").add();
            return;
        }
        double tolerance = 2 * accuracy.value();
        entry.measured(Measure.within(fallMin, wantedMin, tolerance, "min"))
                .saying("falls", pair.inner().name(), pair.outer().name(), Words.min(fallMin), Words.min(wantedMin), Words.min(tolerance))
                .advising("correct")
                .step("angle-difference", Words.deg(pair.inner().settingDeg()), Words.deg(pair.outer().settingDeg()), Words.min(fallMin))
                .add();
    }
}
