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

    /**
     * Starts a trial of one step that cures as many findings as can be: for each in turn the first remedy that cures it and breaks nothing
     * else, on what the remedies before it left.
     *
     * @param outcomes the findings
     * @param document the document; its project is copied before this returns
     * @param display  on whose thread the step is delivered
     * @param cures    receives it, nothing where no finding can be cured
     * @return the job, to be cancelled where the step is of no interest any more
     */
    public static Job startSeveral(List<Outcome> outcomes, ProjectDocument document, Display display, Consumer<List<TriedFix>> cures) {
        Project snapshot = ProjectFile.copy(document.project());
        Job job = Job.create(Messages.get("fix.job"), (IProgressMonitor monitor) -> {
            Optional<TriedFix> step = inTurn(outcomes, snapshot, document, monitor);
            if (!monitor.isCanceled() && !display.isDisposed()) {
                display.asyncExec(() -> cures.accept(step.map(List::of).orElse(List.of())));
            }
            return Status.OK_STATUS;
        });
        job.setSystem(true);
        job.schedule();
        return job;
    }

    private static Optional<TriedFix> inTurn(List<Outcome> outcomes, Project snapshot, ProjectDocument document, IProgressMonitor monitor) {
        Project now = snapshot;
        CheckResult result = check(document.evaluate(now));
        List<QuickFix> taken = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            boolean isCured = !remains(outcome, result);
            for (QuickFix fix : isCured ? List.<QuickFix>of() : QuickFix.of(outcome, now)) {
                if (monitor.isCanceled()) {
                    return Optional.empty();
                }
                Optional<Project> tried = fix.reach() == QuickFix.Reach.CURE ? carriedOut(fix, now, document) : Optional.empty();
                Optional<CheckResult> after = tried.map(document::evaluate).map(FixTrial::check);
                if (after.isPresent() && !remains(outcome, after.get()) && notMet(after.get()) < notMet(result)) {
                    now = tried.get();
                    result = after.get();
                    taken.add(fix);
                    break;
                }
            }
        }
        CheckResult last = result;
        int cured = (int) outcomes.stream().filter(outcome -> !remains(outcome, last)).count();
        return taken.isEmpty() ? Optional.empty()
                : Optional.of(tried(QuickFix.several(taken, cured, document::evaluate), last, snapshot, now, document));
    }

    private static Optional<Project> carriedOut(QuickFix fix, Project on, ProjectDocument document) {
        try {
            Project copy = ProjectFile.copy(on);
            fix.edit(document.evaluate(copy)).execute();
            return Optional.of(copy);
        } catch (EditException | SitingException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static CheckResult check(ProjectEvaluation evaluation) {
        return Checks.run(evaluation, rule -> true);
    }

    private static int notMet(CheckResult result) {
        return result.counts().get(Verdict.NOT_MET);
    }

    private static boolean remains(Outcome outcome, CheckResult result) {
        return result.outcomes().stream().anyMatch(found -> found.verdict() == Verdict.NOT_MET && found.rule().equals(outcome.rule())
                && found.elementId().equals(outcome.elementId()));
    }

    private static Optional<TriedFix> attempt(QuickFix fix, Outcome outcome, Project snapshot, ProjectDocument document) {
        Optional<Project> copy = carriedOut(fix, snapshot, document);
        Optional<CheckResult> result = copy.map(document::evaluate).map(FixTrial::check);
        if (result.isEmpty() || remains(outcome, result.get()) && fix.reach() == QuickFix.Reach.CURE) {
            return Optional.empty();
        }
        return Optional.of(tried(fix, result.get(), snapshot, copy.get(), document));
    }

    private static TriedFix tried(QuickFix fix, CheckResult result, Project before, Project after, ProjectDocument document) {
        ProjectDifference difference = new ProjectDifference(document.evaluate(before), document.evaluate(after));
        return new TriedFix(fix, result.counts(), difference.changes().stream().map(change -> ChangeTexts.line(change, after)).toList(),
                difference.outcomeChanges().stream().sorted(Comparator.comparing(change -> !change.isAnotherVerdict()))
                        .map(ChangeTexts::line).toList());
    }
}
