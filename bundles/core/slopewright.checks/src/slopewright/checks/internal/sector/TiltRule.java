package slopewright.checks.internal.sector;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.evaluation.portable.DeckMotion;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.MeasuredUnit;
import slopewright.model.Stage;
import slopewright.siting.Trait;
import slopewright.standards.CitedValue;

/**
 * A heliport indicator switches itself off when it is tilted, and on a floating deck it holds its beam. Severity fail: beyond that it
 * shows another slope.
 */
public final class TiltRule extends AidRule {
    /** Made by the service loader. */
    public TiltRule() {
        super("BOX-04", Severity.FAIL, Trait.SECTORS);
    }

    @Override
    public Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        boolean floating = DeckMotion.isFloating(facts.host());
        CitedValue limit = facts.angle(floating ? "floating-deck-beam" : "tilt-switch-off");
        boolean anyMeasured = facts.units().stream().anyMatch(unit -> measured(unit) != null);
        if (!floating && !anyMeasured) {
            throw Stop.notApplicable(Message.of("outcome.no-measured-angle"));
        }
        for (UnitAt unit : facts.units()) {
            if (floating || measured(unit) != null) {
                guarded(unit.unit(), outcomes, () -> compare(facts, unit, floating, limit, outcomes));
            }
        }
    }

    private static Double measured(UnitAt unit) {
        MeasuredUnit measured = unit.unit().getMeasured();
        return measured == null ? null : measured.getSettingDeg();
    }

    private static void compare(AidFacts facts, UnitAt unit, boolean floating, CitedValue limit, OutcomeCollector outcomes) {
        if (measured(unit) == null) {
            throw Stop.missing(Message.of("missing.measured-angle", unit.name()),
                    Message.of("BOX-04.floating", Words.degrees(facts.angle("floating-deck-motion").value())));
        }
        double off = Math.abs(measured(unit) - unit.settingDeg());
        outcomes.about(unit.unit()).measured(Measure.atMost(off, limit.value(), "deg")).resting(limit)
                .saying(floating ? "compared-floating" : "compared", unit.name(), Words.degrees(off), Words.degrees(limit.value()))
                .advising(floating ? "stabilise" : "level").add();
    }
}
