package slopewright.checks.internal.unit;

import java.util.List;
import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.EquipmentType;
import slopewright.model.Stage;
import slopewright.siting.ElementNames;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * No more lamps of a unit are out than the rule set allows, and never all of them. Severity fail: a dark unit turns the pattern into
 * that of another slope. Where no limit is known, a unit with all lamps burning is met and one with a lamp out is to be cleared up. Of a
 * panel, which has none, no lamp can be out.
 */
public final class LampsOutRule extends AidRule {
    /** Made by the service loader. */
    public LampsOutRule() {
        super("UNIT-06", Severity.FAIL);
    }

    @Override
    public Stage stage() {
        return Stage.OPERATION;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        if (facts.indicator().has(Trait.PANELS)) {
            unlit(facts, outcomes);
            return;
        }
        EquipmentType type = AidFacts.need(facts.aid().getEquipment(), Message.of("missing.equipment-type"));
        int lamps = AidFacts.need(type.getLampsPerUnit(), Message.of("missing.lamps-of", ElementNames.of(type)));
        Optional<CitedValue> limit = facts.find("lamps-out");
        for (UnitAt unit : facts.units()) {
            guarded(unit.unit(), outcomes, () -> compare(unit, lamps, limit, outcomes));
        }
    }

    /** A panel has no lamp, so that none can be out: a count there belongs to another unit. */
    private static void unlit(AidFacts facts, OutcomeCollector outcomes) {
        List<UnitAt> wrong = facts.units().stream().filter(unit -> unit.unit().getLampsOut() != null && unit.unit().getLampsOut() != 0)
                .toList();
        if (wrong.isEmpty()) {
            throw Stop.notApplicable(Message.of("UNIT-06.unlit"));
        }
        wrong.forEach(unit -> outcomes.about(unit.unit()).met(false).saying("no-lamp", unit.name(),
                Words.count(unit.unit().getLampsOut())).advising("correct").add());
    }

    private static void compare(UnitAt unit, int lamps, Optional<CitedValue> limit, OutcomeCollector outcomes) {
        int out = AidFacts.need(unit.unit().getLampsOut(), Message.of("missing.lamps-out", unit.name()));
        Argument outText = Words.count(out);
        Argument of = Words.count(lamps);
        if (out < 0 || out >= lamps && out > 0) {
            outcomes.about(unit.unit()).met(false).saying(out > lamps || out < 0 ? "impossible" : "dark", unit.name(), outText, of)
                    .advising("relamp").add();
        } else if (limit.isPresent()) {
            outcomes.about(unit.unit()).measured(Measure.atMost(out, limit.get().value(), "")).resting(limit.get())
                    .saying("compared", unit.name(), outText, of, Words.count(Math.round(limit.get().value()))).advising("relamp").add();
        } else if (out > 0) {
            throw Stop.missing(Message.of("missing.lamps-limit"), Message.of("UNIT-06.no-limit", unit.name(), outText, of));
        } else {
            outcomes.about(unit.unit()).met(true).saying("burning", unit.name(), of).add();
        }
    }
}
