package slopewright.ui.review.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.widgets.Display;

import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.checks.Severity;
import slopewright.checks.Verdict;
import slopewright.edit.EditException;
import slopewright.model.Project;
import slopewright.siting.SitingException;
import slopewright.ui.review.QuickFix;

/** Tries remedies on copies of a project in the background and reports those that cure a finding. */
public final class FixTrial {

    /**
     * A remedy that cures the finding.
     *
     * @param fix      the remedy
     * @param failures how many rules would be broken afterwards
     * @param warnings how many warnings would be left
     */
    public record Cure(QuickFix fix, long failures, long warnings) {

        /** Returns the remedy with what it would lead to. */
        public String text() {
            return fix.label() + " (then " + failures + " not met, " + warnings + " to clear up)";
        }
    }

    private FixTrial() {
    }

    /**
     * Starts a trial.
     *
     * @param outcome the finding
     * @param project the project; copied before this returns
     * @param display on whose thread the cures are delivered
     * @param cures   receives them, also where there are none
     * @return the job, to be cancelled where the cures are of no interest any more
     */
    public static Job start(Outcome outcome, Project project, Display display, Consumer<List<Cure>> cures) {
        List<QuickFix> fixes = QuickFix.of(outcome, project);
        Project snapshot = fixes.isEmpty() ? project : EcoreUtil.copy(project);
        Job job = Job.create("Look for remedies", (IProgressMonitor monitor) -> {
            List<Cure> found = new ArrayList<>();
            for (QuickFix fix : fixes) {
                if (monitor.isCanceled()) {
                    return Status.CANCEL_STATUS;
                }
                attempt(fix, outcome, snapshot).ifPresent(found::add);
            }
            if (!monitor.isCanceled() && !display.isDisposed()) {
                display.asyncExec(() -> cures.accept(found));
            }
            return Status.OK_STATUS;
        });
        job.setSystem(true);
        job.schedule();
        return job;
    }

    private static Optional<Cure> attempt(QuickFix fix, Outcome outcome, Project snapshot) {
        Project copy = EcoreUtil.copy(snapshot);
        try {
            fix.edit(copy).execute();
            CheckResult result = Checks.run(copy, Optional.empty());
            boolean remains = result.outcomes().stream().anyMatch(one -> one.verdict() == Verdict.FAIL && one.rule().equals(outcome.rule())
                    && one.elementId().equals(outcome.elementId()));
            return remains ? Optional.empty() : Optional.of(new Cure(fix, count(result, Severity.FAIL), count(result, Severity.WARNING)));
        } catch (EditException | SitingException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static long count(CheckResult result, Severity severity) {
        return result.outcomes().stream().filter(outcome -> outcome.weight().filter(severity::equals).isPresent()).count();
    }
}
