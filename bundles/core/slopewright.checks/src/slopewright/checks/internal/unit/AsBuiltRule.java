package slopewright.checks.internal.unit;

import java.util.List;

import slopewright.checks.AsBuiltVerdicts;
import slopewright.checks.Outcome;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.Verdict;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.messages.Message;
import slopewright.model.Stage;
import slopewright.siting.ElementNames;

/**
 * What was built is what the pilot sees, so the rules of the layout ask of the units where they were measured as well: eye heights, wheel
 * clearances, obstacles, spacing, levels. Each verdict that the plan does not have is one of this rule, as grave
 * as it is there; where it cannot say, a failure, as what it asks for.
 */
public final class AsBuiltRule extends AidRule {
    /** Made by the service loader. */
    public AsBuiltRule() {
        super("UNIT-09", Severity.FAIL);
    }

    @Override
    public Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        if (facts.units().stream().allMatch(unit -> unit.unit().getMeasured() == null)) {
            throw Stop.notApplicable(Message.of("outcome.nothing-measured"));
        }
        List<Outcome> against = AsBuiltVerdicts.against(facts.evaluation());
        for (Outcome found : against) {
            Message text = AsBuiltVerdicts.message(facts.aid(), found);
            if (found.missing().isEmpty()) {
                OutcomeCollector.Entry entry = outcomes.about(facts.aid());
                found.measure().ifPresent(entry::measured);
                entry.met(found.verdict() != Verdict.NOT_MET).severity(found.severity()).citing(found.citations())
                        .toConfirm(found.toConfirm()).saying(text).advising("build").add();
            } else {
                outcomes.notEvaluated(facts.aid(), found.missing(), text);
            }
        }
        List<Message> open = unmeasured(facts.units());
        if (against.isEmpty() && !open.isEmpty()) {
            outcomes.notEvaluated(facts.aid(), open, Message.of("UNIT-09.some", ElementNames.of(facts.aid())));
        } else if (against.isEmpty()) {
            outcomes.about(facts.aid()).met(true).saying("as-planned", ElementNames.of(facts.aid())).add();
        }
    }

    /** Returns the units whose angle nobody measured while that of others was: for them the plan stands in, which nobody saw built. */
    private static List<Message> unmeasured(List<UnitAt> units) {
        List<Message> open = units.stream().filter(unit -> !isMeasured(unit)).map(unit -> Message.of("missing.measured-angle", unit.name()))
                .toList();
        return open.size() == units.size() ? List.of() : open;
    }

    private static boolean isMeasured(UnitAt unit) {
        return unit.unit().getMeasured() != null && unit.unit().getMeasured().getSettingDeg() != null;
    }
}
