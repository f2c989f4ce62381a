package slopewright.ui.properties;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.eclipse.swt.custom.BusyIndicator;
import org.eclipse.swt.widgets.Display;

import slopewright.checks.Verdict;
import slopewright.checks.compare.ProjectDifference;
import slopewright.checks.compare.ProjectDifference.OutcomeChange;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.ui.document.ProjectDocument;

/** What the check would say differently after a change of a project that nobody has made yet. */
final class VerdictChanges {

    private VerdictChanges() {
    }

    /**
     * Tries a change on a copy.
     *
     * @param document the document, which stays as it is
     * @param change   makes the change in a copy of its project
     * @return the outcomes that differ: what gets worse first, then any other verdict, then numbers
     * @throws RuntimeException what the change or the check of the copy threw
     */
    static List<OutcomeChange> of(ProjectDocument document, Consumer<Project> change) {
        List<OutcomeChange> changes = new ArrayList<>();
        RuntimeException[] failed = new RuntimeException[1];
        BusyIndicator.showWhile(Display.getCurrent(), () -> {
            try {
                Project changed = ProjectFile.copy(document.project());
                change.accept(changed);
                new ProjectDifference(document.snapshot(), document.evaluate(changed)).outcomeChanges().stream()
                        .sorted(Comparator.comparing(VerdictChanges::rank)).forEach(changes::add);
            } catch (RuntimeException e) {
                failed[0] = e;
            }
        });
        if (failed[0] != null) {
            throw failed[0];
        }
        return changes;
    }

    /** What gets worse is read first, then any other verdict, then numbers. */
    private static int rank(OutcomeChange change) {
        return !change.isAnotherVerdict() ? 3 : becomes(change, Verdict.NOT_MET) ? 0 : becomes(change, Verdict.TO_CLEAR_UP) ? 1 : 2;
    }

    private static boolean becomes(OutcomeChange change, Verdict verdict) {
        return change.isAnotherVerdict() && change.after().filter(after -> after.verdict() == verdict).isPresent();
    }

    /** Returns how many there are, and of which verdict, in words. */
    static String count(List<OutcomeChange> changes) {
        return PropertyTexts.get("edition.changes", changes.size(), count(changes, Verdict.NOT_MET),
                count(changes, Verdict.TO_CLEAR_UP), count(changes, Verdict.MET));
    }

    private static long count(List<OutcomeChange> changes, Verdict verdict) {
        return changes.stream().filter(change -> becomes(change, verdict)).count();
    }

    /** Returns them as lines. */
    static String lines(List<OutcomeChange> changes) {
        return changes.stream().map(ChangeTexts::line).collect(Collectors.joining("\n"));
    }
}
