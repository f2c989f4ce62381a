package slopewright.ui.document;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.core.runtime.Adapters;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;

import slopewright.checks.CheckResult;

/**
 * Follows the document of the active editor of a page: passes on what happens to it, and says when it is another one. An editor gives
 * its document as its adapter of the type {@link ProjectDocument}.
 */
public final class DocumentFollower {

    private final IWorkbenchPage page;
    private final DocumentListener target;
    private final Consumer<Optional<ProjectDocument>> switched;
    private final IPartListener2 parts = new Parts();
    private final DocumentListener relay = new Relay();
    private Optional<ProjectDocument> current = Optional.empty();

    private final class Parts implements IPartListener2 {

        @Override
        public void partActivated(IWorkbenchPartReference reference) {
            update();
        }

        @Override
        public void partBroughtToTop(IWorkbenchPartReference reference) {
            update();
        }

        @Override
        public void partClosed(IWorkbenchPartReference reference) {
            update();
        }

        @Override
        public void partOpened(IWorkbenchPartReference reference) {
            update();
        }
    }

    private final class Relay implements DocumentListener {

        @Override
        public void changed(Set<String> elementIds) {
            target.changed(elementIds);
        }

        @Override
        public void pointsRead() {
            target.pointsRead();
        }

        @Override
        public void checked(CheckResult result) {
            target.checked(result);
        }

        @Override
        public void unchecked() {
            target.unchecked();
        }

        @Override
        public void stateChanged() {
            target.stateChanged();
        }
    }

    /**
     * Starts to follow.
     *
     * @param page     the page whose active editor counts
     * @param target   hears what happens to the document
     * @param switched hears of the document that is followed from now on, empty where there is none; called at once where there is one
     */
    public DocumentFollower(IWorkbenchPage page, DocumentListener target, Consumer<Optional<ProjectDocument>> switched) {
        this.page = page;
        this.target = target;
        this.switched = switched;
        page.addPartListener(parts);
        update();
    }

    /** Returns the document of the active editor. */
    public Optional<ProjectDocument> document() {
        return current;
    }

    /** Returns the active editor, empty where there is none. */
    public Optional<IEditorPart> editor() {
        return Optional.ofNullable(page.getActiveEditor());
    }

    /**
     * Selects an element in the active editor, where the editor can do that, and gives it the focus.
     *
     * @param elementId id of the element
     */
    public void reveal(String elementId) {
        editor().ifPresent(editor -> {
            ElementRevealer revealer = Adapters.adapt(editor, ElementRevealer.class);
            if (revealer != null) {
                page.activate(editor);
                revealer.reveal(elementId);
            }
        });
    }

    /** Ends following. */
    public void dispose() {
        page.removePartListener(parts);
        current.ifPresent(document -> document.removeListener(relay));
        current = Optional.empty();
    }

    private void update() {
        Optional<ProjectDocument> found = editor().map(editor -> Adapters.adapt(editor, ProjectDocument.class));
        if (!found.equals(current)) {
            current.ifPresent(document -> document.removeListener(relay));
            current = found;
            current.ifPresent(document -> document.addListener(relay));
            switched.accept(current);
        }
    }
}
