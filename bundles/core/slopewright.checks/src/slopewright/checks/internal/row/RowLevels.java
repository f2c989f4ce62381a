package slopewright.checks.internal.row;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.UnitAt;
import slopewright.checks.internal.Worst;
import slopewright.standards.CitedValue;
import slopewright.standards.RuleChoice;

/** What the rules about the levels of a row share. */
final class RowLevels {
    private RowLevels() {
    }

    /** Returns whether the rule set asks for one horizontal plane. */
    static boolean isOnePlane(AidFacts facts) {
        return facts.rules().choice(facts.indicator().ruleKey() + ".level-basis").filter(basis -> basis.word() == RuleChoice.ONE_PLANE)
                .isPresent();
    }

    /** Returns the two units of a side that differ most in level, against the tolerance between any two. */
    static Worst<Neighbours> widest(List<UnitAt> side, CitedValue limit) {
        return Worst.of(Neighbours.all(side), pair -> Measure.atMost(Math.abs(pair.riseM()), limit.value(), "m"));
    }
}
