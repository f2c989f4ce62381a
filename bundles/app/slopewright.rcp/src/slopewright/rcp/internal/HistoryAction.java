package slopewright.rcp.internal;

import java.util.Optional;

import org.eclipse.jface.action.Action;
import org.eclipse.ui.IPageListener;
import org.eclipse.ui.ISharedImages;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.actions.ActionFactory;

import slopewright.edit.EditHistory;
import slopewright.ui.document.DocumentFollower;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.typing.TypingHistory;

/**
 * Takes the last edit of the active project back, or makes it again, whichever view has the focus; its text names the edit. In a field that
 * is being typed into it does so with what was typed.
 */
final class HistoryAction extends Action {

    private final boolean isUndo;
    private final TypingHistory typing;
    private Optional<DocumentFollower> follower = Optional.empty();

    /** Waits for the page of the window. */
    private final class PageListener implements IPageListener {

        @Override
        public void pageActivated(IWorkbenchPage page) {
            if (follower.isEmpty()) {
                follow(page);
            }
        }

        @Override
        public void pageOpened(IWorkbenchPage page) {
            pageActivated(page);
        }

        @Override
        public void pageClosed(IWorkbenchPage page) {
            follower.ifPresent(DocumentFollower::dispose);
            follower = Optional.empty();
        }
    }

    /**
     * Creates the action of one window.
     *
     * @param window the window whose active editor counts
     * @param isUndo whether it takes back; else it makes again
     */
    HistoryAction(IWorkbenchWindow window, boolean isUndo) {
        this.isUndo = isUndo;
        ActionFactory factory = isUndo ? ActionFactory.UNDO : ActionFactory.REDO;
        setId(factory.getId());
        setActionDefinitionId(factory.getCommandId());
        ISharedImages images = window.getWorkbench().getSharedImages();
        setImageDescriptor(images.getImageDescriptor(isUndo ? ISharedImages.IMG_TOOL_UNDO : ISharedImages.IMG_TOOL_REDO));
        setDisabledImageDescriptor(images.getImageDescriptor(
                isUndo ? ISharedImages.IMG_TOOL_UNDO_DISABLED : ISharedImages.IMG_TOOL_REDO_DISABLED));
        typing = TypingHistory.of(window.getShell().getDisplay());
        typing.addListener(this::show);
        show();
        window.addPageListener(new PageListener());
    }

    private void follow(IWorkbenchPage page) {
        follower = Optional.of(new DocumentFollower(page, new DocumentListener() {
            @Override
            public void stateChanged() {
                show();
            }
        }, document -> show()));
        show();
    }

    private Optional<EditHistory> history() {
        return follower.flatMap(DocumentFollower::document).map(ProjectDocument::history);
    }

    private void show() {
        boolean typed = typing.isTyped();
        String label = typed ? Messages.get("menu.typing")
                : history().map(history -> isUndo ? history.undoLabel() : history.redoLabel()).orElse("");
        String text = Messages.get(isUndo ? "menu.undo" : "menu.redo", label).strip();
        setText(text);
        setToolTipText(text.replace("&", ""));
        setEnabled(typed ? isUndo ? typing.canUndo() : typing.canRedo()
                : history().filter(history -> isUndo ? history.canUndo() : history.canRedo()).isPresent());
    }

    @Override
    public void run() {
        if (typing.isTyped()) {
            if (isUndo) {
                typing.undo();
            } else {
                typing.redo();
            }
            return;
        }
        history().ifPresent(history -> {
            if (isUndo) {
                history.undo();
            } else {
                history.redo();
            }
        });
    }
}
