package slopewright.checks.internal.data;

import java.util.Optional;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.messages.Message;
import slopewright.messages.Words;
import slopewright.model.ApproachAid;
import slopewright.model.LightUnit;
import slopewright.siting.ElementNames;

/**
 * Two aids of one approach do not stand at one place: no unit of one stands within a metre of a unit of the other, which is about the size
 * of a unit, nor so straight behind it, within the 30 m (own band) over which two paths that are a metre apart reach, that the pilot sees
 * both as one light. A warning: one of them is not there, or a plan that was given up.
 */
public final class SharedPlaceRule extends ProjectRule {
    private static final double UNIT_M = 1;
    private static final double BEHIND_M = 30;

    /** Made by the service loader. */
    public SharedPlaceRule() {
        super("DATA-22", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        for (AidEvaluation aid : evaluation.aids()) {
            if (aid.host().getAids().size() == 1) {
                outcomes.notApplicable(aid.aid(), Message.of("DATA-22.only", ElementNames.of(aid.host())));
                continue;
            }
            Optional<ApproachAid> overlapping = aid.host().getAids().stream().filter(near -> near != aid.aid())
                    .filter(near -> overlap(near, aid.aid())).findFirst();
            OutcomeCollector.Entry entry = outcomes.about(aid.aid()).met(overlapping.isEmpty());
            overlapping.ifPresentOrElse(near -> entry.saying("overlapping", ElementNames.of(near), Words.m(UNIT_M), Words.m(BEHIND_M)),
                    () -> entry.saying("apart", Words.m(UNIT_M), Words.m(BEHIND_M)));
            entry.advising("remove").add();
        }
    }

    private static boolean overlap(ApproachAid aid, ApproachAid near) {
        return aid.getUnits().stream().anyMatch(unit -> near.getUnits().stream().anyMatch(beside -> overlap(unit, beside)));
    }

    private static boolean overlap(LightUnit unit, LightUnit beside) {
        return unit.getAlongM() != null && unit.getRightM() != null && beside.getAlongM() != null && beside.getRightM() != null
                && Math.abs(unit.getRightM() - beside.getRightM()) < UNIT_M && Math.abs(unit.getAlongM() - beside.getAlongM()) < BEHIND_M;
    }
}
