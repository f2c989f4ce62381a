package slopewright.checks.internal.circuit;

import slopewright.checks.Measure;
import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.AidFacts;
import slopewright.checks.internal.AidRule;
import slopewright.checks.internal.Stop;
import slopewright.messages.Argument;
import slopewright.messages.Message;
import slopewright.messages.Notation;
import slopewright.messages.Words;
import slopewright.model.ApproachType;
import slopewright.model.Circuit;
import slopewright.model.RunwayEnd;
import slopewright.model.Stage;
import slopewright.siting.ElementNames;
import slopewright.standards.CitedValue;

/**
 * Where the mains fail, another supply takes over in time, at runways with a non-precision approach or a precision approach of category I;
 * sooner where the approach leads over hazardous or steep terrain. A warning: an indicator that is out shows nothing false; but the short
 * time over such terrain is of severity fail, because the pilot has nothing else to keep clear of it.
 */
public final class SwitchOverRule extends AidRule {
    /** Made by the service loader. */
    public SwitchOverRule() {
        super("CIRC-02", Severity.WARNING);
    }

    @Override
    public Stage stage() {
        return Stage.SET_UP;
    }

    @Override
    public void check(AidFacts facts, OutcomeCollector outcomes) {
        RunwayEnd end = facts.end();
        CitedValue usual = facts.common("standby.instrument-s");
        CitedValue hazardous = facts.common("standby.hazardous-terrain-s");
        if (end.getApproachType() == ApproachType.NOT_STATED) {
            throw Stop.missing(Message.of("missing.approach-type", ElementNames.of(end)));
        }
        boolean listed = end.getApproachType() == ApproachType.NON_PRECISION || end.getApproachType() == ApproachType.PRECISION_CAT_I;
        if (!listed) {
            throw Stop.notApplicable(Message.of("CIRC-02.not-listed"));
        }
        boolean overTerrain = AidFacts.need(end.getHazardousTerrain(), Message.of("missing.hazardous-terrain", ElementNames.of(end)));
        CitedValue limit = overTerrain ? hazardous : usual;
        Severity severity = overTerrain ? Severity.FAIL : severity();
        for (Circuit circuit : Circuits.of(facts)) {
            guarded(facts.aid(), outcomes, () -> compare(facts, circuit, limit, severity, outcomes));
        }
    }

    private static void compare(AidFacts facts, Circuit circuit, CitedValue limit, Severity severity, OutcomeCollector outcomes) {
        Argument name = ElementNames.of(circuit);
        boolean standby = AidFacts.need(circuit.getStandby(), Message.of("missing.standby", name));
        OutcomeCollector.Entry entry = outcomes.about(facts.aid()).severity(severity).resting(limit);
        if (!standby) {
            entry.met(false).saying("none", name, seconds(limit.value())).advising("supply").add();
            return;
        }
        double seconds = AidFacts.need(circuit.getSwitchOverS(), Message.of("missing.switch-over", name));
        entry.measured(Measure.atMost(seconds, limit.value(), "")).saying("compared", name, seconds(seconds), seconds(limit.value()))
                .advising("supply").add();
    }

    private static Argument seconds(double seconds) {
        return Words.quantity(seconds, Notation.SECONDS);
    }
}
