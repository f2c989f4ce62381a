package slopewright.checks.internal.range;

import java.util.List;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.siting.Siting;
import slopewright.standards.Citation;
import slopewright.standards.CitedValue;

/**
 * A light that is too weak guides nobody at the distance at which it should. What counts is the intensity toward an eye on the slope at
 * that distance. Where texts disagree about what the eye needs, it is met only by all of them and not met only by none. A warning: the
 * range is an estimate, and a shorter one may be stated.
 */
public final class SeenRangeRule extends AidRule {
    private static final double MICRO = 1e6;

    /** Made by the service loader. */
    public SeenRangeRule() {
        super("RANGE-01", Severity.WARNING);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        UsefulRange useful = new UsefulRange(facts);
        List<UsefulRange.Seen> all = useful.ofEquipment();
        CitedValue visibility = useful.visibility();
        Argument seen = Words.list(all.stream().map(SeenRangeRule::sentence).toList());
        boolean fails = all.stream().anyMatch(range -> range.mildRangeM() < range.expected().range().value());
        List<UsefulRange.Seen> disputed = all.stream().filter(UsefulRange.Seen::isDisputed).toList();
        if (!fails && !disputed.isEmpty()) {
            UsefulRange.Seen range = disputed.get(0);
            outcomes.notEvaluated(facts.aid(), List.of(Message.of("missing.eye-threshold", condition(range))),
                    Message.of("RANGE-01.disputed", condition(range), Words.km(range.mildRangeM()), microlux(range.threshold().mildest()),
                            Words.km(range.rangeM()), microlux(range.threshold().strictest()), Words.km(range.expected().range().value())),
                    List.of(range.threshold().mildest(), range.threshold().strictest()));
            return;
        }
        OutcomeCollector.Entry entry = outcomes.about(facts.aid()).resting(visibility, facts.common("range.contrast-threshold-percent"));
        Measure worst = null;
        for (UsefulRange.Seen range : all) {
            Measure measure = Measure.atLeast(fails ? range.mildRangeM() : range.rangeM(), range.expected().range().value(), "m");
            worst = worst == null ? measure : Measure.worse(worst, measure);
            entry.resting(range.expected().range(), fails ? range.threshold().mildest() : range.threshold().strictest());
            entry.citing(range.output().uses().stream().map(Siting.CitedUse::citation).filter(Citation::toConfirm).toList());
        }
        entry.measured(worst).saying("compared", Words.km(visibility.value()), seen).advising("stronger").add();
    }

    private static Message sentence(UsefulRange.Seen range) {
        return Message.of("RANGE-01.seen", Words.km(range.rangeM()), condition(range), Words.km(range.expected().range().value()),
                Words.quantity(range.intensityCd(), Notation.CANDELA));
    }

    private static Argument condition(UsefulRange.Seen range) {
        return Words.term("light." + range.expected().condition().key());
    }

    private static Argument microlux(CitedValue value) {
        return Words.number(value.value() * MICRO);
    }
}
