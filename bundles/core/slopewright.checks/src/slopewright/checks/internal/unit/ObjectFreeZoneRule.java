package slopewright.checks.internal.unit;

import java.util.Comparator;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.Runway;
import slopewright.siting.ElementNames;

/**
 * No unit stands in the zone beside the centre line that is kept free of every object. Its width is that which the aerodrome or the
 * authority gives, entered with its source. Severity fail: an aeroplane that leaves the runway strikes the unit.
 */
public final class ObjectFreeZoneRule extends AidRule {
    /** Made by the service loader. */
    public ObjectFreeZoneRule() {
        super("UNIT-07", Severity.FAIL);
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        facts.end();
        Runway runway = facts.runway().orElseThrow();
        Argument name = ElementNames.of(runway);
        double width = AidFacts.need(runway.getObjectFreeWidthM(), Message.of("missing.object-free-width", name));
        String source = runway.getObjectFreeSource();
        AidFacts.need(source == null || source.isBlank() ? null : source, Message.of("missing.object-free-source", name));
        UnitAt nearest = facts.units().stream().min(Comparator.comparingDouble(unit -> Math.abs(unit.rightM()))).orElseThrow();
        double distance = Math.abs(nearest.rightM());
        outcomes.about(facts.aid()).measured(Measure.atLeast(distance, width / 2, "m"))
                .saying("compared", nearest.name(), Words.m(distance), Words.m(width / 2), Words.name(source)).advising("move").add();
    }
}
