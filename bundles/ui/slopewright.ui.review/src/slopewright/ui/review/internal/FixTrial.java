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
import slopewright.checks.compare.ProjectDifference;
import slopewright.edit.EditException;
import slopewright.model.Project;
import slopewright.siting.SitingException;
import slopewright.ui.properties.ChangeTexts;
import slopewright.ui.review.QuickFix;

/** Tries remedies on copies of a project in the background and reports those that cure a finding, with what they would change. */
public final class FixTrial {

    private static final int CHANGES_SHOWN = 12;
    private static final int OUTCOMES_SHOWN = 12;

    /**
     * A remedy that was tried out.
     *
     * @param fix      the remedy
     * @param failures how many rules would be broken afterwards
     * @param warnings how many warnings would be left
     * @param changes  what it would change, a line each
     * @param outcomes which outcomes would differ, a line each
     */
    public record Cure(QuickFix fix, long failures, long warnings, List<String> changes, List<String> outcomes) {

        /** Returns the remedy with what it would lead to. */
        public String text() {
            return Messages.get("fix.text", fix.label(), failures, warnings);
        }

        /** Returns what it would change and lead to, a line each. */
        public String preview() {
            List<String> lines = new ArrayList<>();
            if (!fix.note().isEmpty()) {
                lines.add(fix.note());
            }
            lines.add(Messages.get("fix.changes"));
            ChangeTexts.firstOf(changes, CHANGES_SHOWN).forEach(line -> lines.add("  " + line));
            lines.add(Messages.get(outcomes.isEmpty() ? "fix.noOutcomes" : "fix.outcomes"));
            ChangeTexts.firstOf(outcomes, OUTCOMES_SHOWN).forEach(line -> lines.add("  " + line));
            lines.add(Messages.get("fix.afterwards", failures, warnings));
            return String.join("\n", lines);
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
        Job job = Job.create(Messages.get("fix.job"), (IProgressMonitor monitor) -> {
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
            boolean remains = result.outcomes().stream().anyMatch(one -> one.verdict() == Verdict.NOT_MET && one.rule().equals(outcome.rule())
                    && one.elementId().equals(outcome.elementId()));
            if (remains && fix.reach() == QuickFix.Reach.CURE) {
                return Optional.empty();
            }
            ProjectDifference difference = new ProjectDifference(snapshot, copy);
            return Optional.of(new Cure(fix, count(result, Severity.FAIL), count(result, Severity.WARNING),
                    difference.changes().stream().map(change -> ChangeTexts.line(change, copy)).toList(),
                    difference.outcomeChanges().stream().map(ChangeTexts::line).toList()));
        } catch (EditException | SitingException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static long count(CheckResult result, Severity severity) {
        return result.outcomes().stream().filter(outcome -> outcome.weight().filter(severity::equals).isPresent()).count();
    }
}
