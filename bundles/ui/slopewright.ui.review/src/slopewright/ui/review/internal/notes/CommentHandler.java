package slopewright.ui.review.internal.notes;

import java.util.Optional;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.handlers.HandlerUtil;

import slopewright.checks.Outcome;
import slopewright.ui.document.ActiveDocument;
import slopewright.ui.review.FindingsView;

/** Asks for a comment on the finding that is selected where the findings have the focus, else on the element that is selected. */
public final class CommentHandler extends AbstractHandler {

    @Override
    public boolean isEnabled() {
        return ActiveDocument.get().isPresent();
    }

    @Override
    public Object execute(ExecutionEvent event) {
        IWorkbenchPart part = HandlerUtil.getActivePart(event);
        Optional<Outcome> finding = part instanceof FindingsView findings ? findings.selected() : Optional.empty();
        ActiveDocument.get().ifPresent(document -> new NoteDesk(document).askComment(HandlerUtil.getActiveShell(event),
                finding.map(Outcome::elementId).or(() -> Optional.ofNullable(document.viewState().selection().get(0).getId())),
                finding.map(Outcome::rule)));
        return null;
    }
}
