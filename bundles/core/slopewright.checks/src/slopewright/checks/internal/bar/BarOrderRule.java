package slopewright.checks.internal.bar;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Words;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/** Farther bars are set higher. Severity fail: in the other order the colours change places. */
public final class BarOrderRule extends AidRule {

    /** Made by the service loader. */
    public BarOrderRule() {
        super("BAR-06", Severity.FAIL, Trait.BARS);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        CitedValue offset = facts.angle("far-offset");
        for (BarPair pair : BarPair.of(facts)) {
            double highestNear = facts.bar(pair.near()).stream().mapToDouble(UnitAt::settingDeg).max().orElseThrow();
            double lowestFar = facts.bar(pair.far()).stream().mapToDouble(UnitAt::settingDeg).min().orElseThrow();
            outcomes.about(facts.aid()).met(pair.spacingM() > 0 && lowestFar > highestNear).resting(offset)
                    .saying("order", Words.count(pair.far()), Words.m(pair.farM()), Words.deg(lowestFar), Words.count(pair.near()),
                            Words.m(pair.nearM()), Words.deg(highestNear))
                    .advising("exchange").add();
        }
    }
}
