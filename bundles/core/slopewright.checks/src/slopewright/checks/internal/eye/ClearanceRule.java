package slopewright.checks.internal.eye;

import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.evaluation.WheelClearance;
import slopewright.geometry.Angles;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.AeroplaneGroup;
import slopewright.siting.ElementNames;
import slopewright.siting.Siting;
import slopewright.standards.WheelClearanceTable;

/** Wheel clearance of the aeroplane groups in regular use against the table of the rule set. */
abstract class ClearanceRule extends AidRule {

    /**
     * One aeroplane group with its band of the table.
     *
     * @param clearance the evaluated clearance
     * @param band      the band
     * @param table     the table
     */
    record Case(WheelClearance clearance, WheelClearanceTable.Group band, WheelClearanceTable table) {
        Argument name() {
            return ElementNames.of(clearance.group());
        }
    }

    ClearanceRule(String id, Severity severity) {
        super(id, severity);
    }

    @Override
    public final void check(AidFacts facts, OutcomeCollector outcomes) {
        facts.end();
        WheelClearanceTable table = facts.rules().wheelClearance()
                .orElseThrow(() -> Stop.notApplicable(Message.of("wheel.no-table", facts.rules().descriptor().name())));
        if (facts.host().getRegularGroups().isEmpty()) {
            throw Stop.missing(Message.of("missing.aeroplane-groups"));
        }
        facts.laid();
        for (AeroplaneGroup group : facts.host().getRegularGroups()) {
            guarded(facts.aid(), outcomes, () -> check(facts, found(facts, group, table), outcomes));
        }
    }

    private static Case found(AidFacts facts, AeroplaneGroup group, WheelClearanceTable table) {
        Optional<WheelClearance> found = facts.evaluation().wheelClearances().stream().filter(clearance -> clearance.group() == group)
                .findFirst();
        WheelClearance clearance = found.orElseThrow(() -> Stop.missing(Message.of("missing.eye-to-wheel", ElementNames.of(group))));
        WheelClearanceTable.Group band = clearance.band().orElseThrow(() -> Stop.missing(Message.of("missing.clearance-band"),
                Message.of("wheel.outside-table", ElementNames.of(group), Words.m(clearance.eyeToWheelM()))));
        return new Case(clearance, band, table);
    }

    /** Checks one group. */
    abstract void check(AidFacts facts, Case one, OutcomeCollector outcomes);

    /** Starts the outcome of a group; the allowance on the lowest on-slope signal decides it as much as the table does. */
    static OutcomeCollector.Entry entry(AidFacts facts, OutcomeCollector outcomes) {
        OutcomeCollector.Entry entry = outcomes.about(facts.aid());
        facts.find("boundary-allowance-min").ifPresent(entry::resting);
        return entry.steps(MinimumEyeHeight.steps(facts.laid()));
    }

    /** Records how the clearance over the threshold follows from the eye height. */
    static OutcomeCollector.Entry withStep(OutcomeCollector.Entry entry, Siting laid, WheelClearance clearance) {
        return entry.step("wheel-clearance", Words.m(laid.mehtM()), Words.m(clearance.eyeToWheelM()), Words.m(clearance.clearanceM()));
    }

    /** Returns how far a layout must move to gain a clearance. */
    static Argument move(AidFacts facts, double gainM) {
        return Words.m(Math.max(0, gainM) / Angles.tanDeg(facts.laid().lowestOnSlopeDeg()));
    }
}
