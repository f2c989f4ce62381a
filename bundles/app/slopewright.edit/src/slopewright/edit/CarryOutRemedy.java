package slopewright.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

import org.eclipse.emf.ecore.EObject;

import slopewright.evaluation.AidEvaluation;
import slopewright.evaluation.remedy.Remedy;
import slopewright.evaluation.remedy.RemedyChange;
import slopewright.messages.Message;
import slopewright.model.ApproachAid;
import slopewright.model.ApproachHost;
import slopewright.model.RunwayEnd;
import slopewright.model.util.Ids;
import slopewright.model.util.Projects;
import slopewright.standards.RuleSet;

/** Carries a computed remedy against a penetrated obstacle surface out: the very change that was tried when it was offered. */
public final class CarryOutRemedy extends RecordedEdit {
    private final ApproachAid aid;
    private final RuleSet rules;
    private final Remedy remedy;

    private CarryOutRemedy(String label, ApproachAid aid, RuleSet rules, Remedy remedy) {
        super(label);
        this.aid = aid;
        this.rules = rules;
        this.remedy = remedy;
    }

    /**
     * Carries a remedy out.
     *
     * @param label      what the user did, as it stands after "Undo"
     * @param evaluation the evaluation of the aid for which the remedy was computed
     * @param remedy     the remedy
     * @return the edit; carrying it out throws a {@link slopewright.siting.SitingException} where it cannot be
     * @throws EditException where the remedy does not help; the message says why
     */
    public static CarryOutRemedy of(String label, AidEvaluation evaluation, Remedy remedy) {
        if (!remedy.helps()) {
            throw new EditException(remedy.message());
        }
        return new CarryOutRemedy(label, evaluation.aid(), evaluation.rules(), remedy);
    }

    @Override
    protected Collection<? extends EObject> scope() {
        List<EObject> scope = new ArrayList<>(List.of(aid));
        scope.addAll(aid.getUnits());
        ApproachHost host = Projects.host(aid).orElseThrow(() -> new EditException(Message.of("edit.no-host")));
        scope.add(host);
        if (host instanceof RunwayEnd end) {
            scope.add(end.getThreshold());
            scope.addAll(end.getSiteProfile());
            end.getAids().stream().filter(each -> each != aid).forEach(each -> scope.addAll(each.getUnits()));
            if (end.getGlidePath() != null) {
                scope.add(end.getGlidePath());
            }
        }
        return scope;
    }

    @Override
    protected void apply() {
        RemedyChange.carryOut(remedy, aid, rules);
        Ids.assign(aid, Projects.project(aid).orElseThrow());
    }
}
