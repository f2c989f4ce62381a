package slopewright.ui.review.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

import slopewright.checks.CheckResult;
import slopewright.checks.Checks;
import slopewright.checks.Outcome;
import slopewright.checks.Verdict;
import slopewright.checks.compare.ProjectDifference;
import slopewright.edit.EditException;
import slopewright.evaluation.ProjectEvaluation;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.siting.SitingException;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.properties.ChangeTexts;
import slopewright.ui.review.QuickFix;

/** Tries remedies on copies of a project in the background and reports those that cure a finding, with what they would change. */
public final class FixTrial {

    private FixTrial() {
    }

    /**
     * Starts a trial.
     *
     * @param outcome  the finding
     * @param document the document; its project is copied before this returns
     * @param display  on whose thread the cures are delivered
     * @param cures    receives them, also where there are none
     * @return the job, to be cancelled where the cures are of no interest any more
     */
    public static Job start(Outcome outcome, ProjectDocument document, Display display, Consumer<List<TriedFix>> cures) {
        List<QuickFix> fixes = QuickFix.of(outcome, document.project());
        Project snapshot = fixes.isEmpty() ? document.project() : ProjectFile.copy(document.project());
        Job job = Job.create(Messages.get("fix.job"), (IProgressMonitor monitor) -> {
            List<TriedFix> found = new ArrayList<>();
            for (QuickFix fix : fixes) {
                if (monitor.isCanceled()) {
                    return Status.CANCEL_STATUS;
                }
                attempt(fix, outcome, snapshot, document).ifPresent(found::add);
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

    private static Optional<TriedFix> attempt(QuickFix fix, Outcome outcome, Project snapshot, ProjectDocument document) {
        try {
            Project copy = ProjectFile.copy(snapshot);
            fix.edit(document.evaluate(copy)).execute();
            ProjectEvaluation after = document.evaluate(copy);
            CheckResult result = Checks.run(after, rule -> true);
            boolean remains = result.outcomes().stream().anyMatch(found -> found.verdict() == Verdict.NOT_MET
                    && found.rule().equals(outcome.rule()) && found.elementId().equals(outcome.elementId()));
            if (remains && fix.reach() == QuickFix.Reach.CURE) {
                return Optional.empty();
            }
            ProjectDifference difference = new ProjectDifference(document.evaluate(snapshot), after);
            return Optional.of(new TriedFix(fix, result.counts(),
                    difference.changes().stream().map(change -> ChangeTexts.line(change, copy)).toList(),
                    difference.outcomeChanges().stream()
                            .sorted(Comparator.comparing(change -> !change.isAnotherVerdict())).map(ChangeTexts::line).toList()));
        } catch (EditException | SitingException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }
}
