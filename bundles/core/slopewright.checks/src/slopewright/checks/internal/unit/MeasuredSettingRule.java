package slopewright.checks.internal.unit;

import java.util.Optional;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.checks.internal.UnitAt;
import slopewright.evaluation.asbuilt.SettingTolerance;
import slopewright.evaluation.obstacles.SurveyDays;
import slopewright.geometry.Angles;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.MeasuredUnit;
import slopewright.model.Stage;
import slopewright.standards.CitedValue;

/**
 * Units that were measured still point where they were set: one that does not shows another slope. Severity fail for that reason. A unit
 * in use may be off by what the rule set lets pass before it is set again, one that is set up by no more than the accuracy of setting.
 * Where the rule set gives neither, nobody knows whether a difference may be; and of a unit that was not measured when others of its aid
 * were, or when the aid is in use, nobody knows where it points. A portable unit is set anew wherever it is carried.
 * In use it counts as well who measured it and when: the upkeep of the sources looks at the aiming every month, and what was measured more
 * than a year before the project (own band) may point elsewhere by now.
 */
public final class MeasuredSettingRule extends AidRule {
    private static final int YEARS = 1;

    /** Made by the service loader. */
    public MeasuredSettingRule() {
        super("UNIT-05", Severity.FAIL);
    }

    @Override
    public Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        SettingTolerance tolerance = SettingTolerance.of(facts.rules(), facts.indicator());
        boolean inUse = facts.evaluation().project().getStage() == Stage.OPERATION;
        Optional<CitedValue> limit = inUse ? tolerance.resetBeyond().or(tolerance::accuracy) : tolerance.limit();
        if (facts.units().stream().noneMatch(MeasuredSettingRule::isMeasured)) {
            if (inUse && !Boolean.TRUE.equals(facts.aid().getPortable())) {
                throw Stop.missing(Message.of("missing.measured-angles"), Message.of("UNIT-05.in-use"));
            }
            throw Stop.notApplicable(Message.of("outcome.no-measured-angle"));
        }
        for (UnitAt unit : facts.units()) {
            guarded(unit.unit(), outcomes, () -> compare(unit, limit, inUse ? undated(unit, facts) : Optional.empty(), outcomes));
        }
    }

    private static boolean isMeasured(UnitAt unit) {
        return unit.unit().getMeasured() != null && unit.unit().getMeasured().getSettingDeg() != null;
    }

    /** Returns why nobody can tell of a unit in use when it was measured, or by whom, or whether it is still so. */
    private static Optional<Message> undated(UnitAt unit, AidFacts facts) {
        if (!isMeasured(unit)) {
            return Optional.empty();
        }
        MeasuredUnit measured = unit.unit().getMeasured();
        if (measured.getDate() == null || measured.getDate().isBlank() || measured.getPerson() == null || measured.getPerson().isBlank()) {
            return Optional.of(Message.of("UNIT-05.undated", unit.name()));
        }
        return SurveyDays.isLongAgo(measured.getDate(), facts.evaluation().project(), YEARS) ? Optional.of(Message.of("UNIT-05.long-ago",
                unit.name(), Words.name(measured.getDate()))) : Optional.empty();
    }

    private static void compare(UnitAt unit, Optional<CitedValue> limit, Optional<Message> undated, OutcomeCollector outcomes) {
        if (!isMeasured(unit)) {
            throw Stop.missing(Message.of("missing.measured-angle", unit.name()), Message.of("UNIT-05.not-this-one", unit.name()));
        }
        double found = unit.unit().getMeasured().getSettingDeg();
        double off = Angles.degToMinutes(Math.abs(found - unit.settingDeg()));
        if (limit.isEmpty()) {
            Measure none = Measure.atMost(off, 0, "min");
            if (!none.isMet()) {
                throw Stop.missing(Message.of("missing.setting-tolerance"), Message.of("UNIT-05.no-tolerance", unit.name(),
                        Words.deg(found), Words.min(off), Words.deg(unit.settingDeg())));
            }
            undated.ifPresent(reason -> {
                throw Stop.missing(Message.of("missing.measured-day", unit.name()), reason);
            });
            outcomes.about(unit.unit()).measured(none).saying("as-set", unit.name(), Words.deg(found)).add();
            return;
        }
        CitedValue most = limit.get();
        Measure measure = Measure.atMost(off, most.value(), "min");
        if (measure.isMet() && undated.isPresent()) {
            throw Stop.missing(Message.of("missing.measured-day", unit.name()), undated.get());
        }
        outcomes.about(unit.unit()).measured(measure).resting(most).saying("compared", unit.name(),
                Words.deg(found), Words.min(off), Words.deg(unit.settingDeg()), Words.min(most.value())).advising("reset").add();
    }
}
