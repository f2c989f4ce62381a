package slopewright.ui.properties;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Display;

import slopewright.checks.compare.ProjectDifference.OutcomeChange;
import slopewright.edit.MoveToEdition;
import slopewright.evaluation.Editions;
import slopewright.model.ApproachAid;
import slopewright.model.Identified;
import slopewright.model.Project;
import slopewright.model.util.Projects;
import slopewright.ui.MessageTexts;
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
            changes = VerdictChanges.of(document, moved -> MoveToEdition.of(moved).execute());
        } catch (IllegalArgumentException e) {
            MessageDialog.openError(Display.getCurrent().getActiveShell(), title, MessageTexts.reason(e));
            return;
        }
        if (new EditionDialog(Display.getCurrent().getActiveShell(), title, question(target, changes),
                VerdictChanges.lines(changes)).open() == 0) {
            document.history().perform(MoveToEdition.of(target));
        }
    }

    private static String question(Project target, List<OutcomeChange> changes) {
        List<Editions.Move> moves = Editions.moves(target);
        String editions = moves.stream().map(move -> PropertyTexts.get("edition.from-to", move.from(), move.to())).distinct()
                .collect(Collectors.joining(", "));
        return PropertyTexts.get("edition.question", editions, moves.size(), Editions.lapsing(target, moves)) + "\n\n"
                + VerdictChanges.count(changes);
    }
}
