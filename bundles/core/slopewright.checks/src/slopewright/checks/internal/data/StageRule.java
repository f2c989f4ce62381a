package slopewright.checks.internal.data;

import java.util.List;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.checks.Stages;
import slopewright.checks.internal.ProjectRule;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.ApproachAid;
import slopewright.model.Project;
import slopewright.model.Stage;
import slopewright.model.util.Projects;
import slopewright.siting.ElementNames;

/**
 * What was measured in the field or found in flight stands there: a project that holds it is no longer at the stage of design, at which
 * nothing is asked about set-up and operation. A warning: the layout is judged alike at every stage, what is asked beside it is not.
 */
public final class StageRule extends ProjectRule {
    /** Made by the service loader. */
    public StageRule() {
        super("REC-05", Severity.WARNING);
    }

    @Override
    public void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        Project project = evaluation.project();
        List<ApproachAid> there = Projects.aids(project).stream().filter(StageRule::stands).toList();
        if (Projects.aids(project).isEmpty()) {
            return;
        }
        boolean design = project.getStage() == Stage.DESIGN;
        if (there.isEmpty() || !design) {
            outcomes.about(project).met(true).saying("fits", Stages.term(project.getStage())).add();
        }
        if (design) {
            there.forEach(aid -> outcomes.about(aid).met(false).saying("stands", ElementNames.of(aid), Stages.term(project.getStage()))
                    .advising("correct").add());
        }
    }

    private static boolean stands(ApproachAid aid) {
        return !aid.getInspections().isEmpty() || aid.getUnits().stream().anyMatch(unit -> unit.getMeasured() != null);
    }
}
