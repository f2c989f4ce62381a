package slopewright.checks.internal;

import slopewright.checks.OutcomeCollector;
import slopewright.checks.Severity;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Project;

/**
 * A rule about the site alone: it looks at no aid and at nothing which an aid holds, and at nothing outside the project. So what it said
 * holds as long as nothing but aids has changed, and it does not go over ten thousand obstacles again when a row was moved.
 */
public abstract class SiteRule extends ProjectRule {

    /** Makes a rule with its id and how grave it is where it is not met. */
    protected SiteRule(String id, Severity severity) {
        super(id, severity);
    }

    @Override
    public final void check(ProjectEvaluation evaluation, OutcomeCollector outcomes) {
        if (evaluation.project().getAerodrome() != null) {
            outcomes.addAll(evaluation.keepOfSite(id(), () -> {
                OutcomeCollector found = new OutcomeCollector(this);
                check(evaluation.project(), found);
                return found.outcomes();
            }));
        }
    }

    /**
     * Checks the site.
     *
     * @param project  the project, which has an aerodrome; its aids must not be looked at
     * @param outcomes receives the outcomes
     */
    protected abstract void check(Project project, OutcomeCollector outcomes);
}
