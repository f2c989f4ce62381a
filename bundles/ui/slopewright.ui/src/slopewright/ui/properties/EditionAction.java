package slopewright.ui.properties;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.custom.BusyIndicator;
import org.eclipse.swt.widgets.Display;

import slopewright.checks.Verdict;
import slopewright.checks.compare.ProjectDifference;
import slopewright.checks.compare.ProjectDifference.OutcomeChange;
import slopewright.edit.MoveToEdition;
import slopewright.evaluation.Editions;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.io.ProjectFile;
import slopewright.model.util.Projects;
import slopewright.ui.document.ProjectDocument;

/**
 * Offers to move a project that stands under an older edition of a rule set to the newer one: shows beforehand what the check says
 * differently, and that what was confirmed lapses; then moves project and aids as one step.
 */
final class EditionAction extends Action {

    private Optional<Project> project = Optional.empty();

    EditionAction() {
        super(PropertyTexts.get("sheet.edition"));
        setEnabled(false);
    }

    /** Says which element is shown: it is offered where the edition stands, at the project and at its aids. */
    void offer(Optional<Identified> shown) {
        project = shown.filter(element -> element instanceof Project || element instanceof ApproachAid).flatMap(Projects::project)
                .filter(found -> ProjectDocument.of(found).isPresent() && !Editions.moves(found).isEmpty());
        setEnabled(project.isPresent());
    }

    @Override
    public void run() {
        project.ifPresent(target -> ProjectDocument.of(target).ifPresent(document -> ask(target, document)));
    }

    private void ask(Project target, ProjectDocument document) {
        String title = getText().replace("…", "");
        List<OutcomeChange> changes;
        try {
            changes = changes(target, document);
        } catch (IllegalArgumentException e) {
            MessageDialog.openError(Display.getCurrent().getActiveShell(), title, e.getMessage());
            return;
        }
        if (new EditionDialog(Display.getCurrent().getActiveShell(), title, question(target, changes), lines(changes)).open() == 0) {
            document.history().perform(MoveToEdition.of(target));
        }
    }

    private static List<OutcomeChange> changes(Project target, ProjectDocument document) {
        Project moved = ProjectFile.copy(target);
        MoveToEdition.of(moved).execute();
        ProjectDifference difference = new ProjectDifference(document.snapshot(), document.evaluate(moved));
        List<OutcomeChange> changes = new ArrayList<>();
        RuntimeException[] failed = new RuntimeException[1];
        BusyIndicator.showWhile(Display.getCurrent(), () -> {
            try {
                difference.outcomeChanges().stream().sorted(Comparator.comparing(EditionAction::rank)).forEach(changes::add);
            } catch (IllegalArgumentException e) {
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

    private static String question(Project target, List<OutcomeChange> changes) {
        List<Editions.Move> moves = Editions.moves(target);
        String editions = moves.stream().map(move -> PropertyTexts.get("edition.from-to", move.from(), move.to())).distinct()
                .collect(Collectors.joining(", "));
        return PropertyTexts.get("edition.question", editions, moves.size(), Editions.lapsing(target, moves)) + "\n\n"
                + PropertyTexts.get("edition.changes", changes.size(), count(changes, Verdict.NOT_MET),
                        count(changes, Verdict.TO_CLEAR_UP), count(changes, Verdict.MET));
    }

    private static long count(List<OutcomeChange> changes, Verdict verdict) {
        return changes.stream().filter(change -> becomes(change, verdict)).count();
    }

    private static String lines(List<OutcomeChange> changes) {
        return changes.stream().map(ChangeTexts::line).collect(Collectors.joining("\n"));
    }
}
