package slopewright.ui.elements;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IAction;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.IActionBars;
import org.eclipse.ui.actions.ActionFactory;

import slopewright.model.Identified;
import slopewright.ui.properties.ReadBackDialog;
import slopewright.ui.typing.TypedText;

/** What the user can do with rows: cut, copy, paste, duplicate, remove, select all, show in the plan, read back. */
final class ElementActions {

    private final ElementsView view;
    private final IAction cut = action("elements.cut", () -> typing(TypedText::cut, this::cut));
    private final IAction copy = action("elements.copy", () -> typing(TypedText::copy, this::copy));
    private final IAction paste = action("elements.paste", () -> typing(TypedText::paste, this::paste));
    private final IAction remove;
    private final IAction duplicate;
    private final IAction show = action("elements.show", this::show);
    private final IAction readBack = action("elements.read-back", this::readBack);

    ElementActions(ElementsView view, IActionBars bars) {
        this.view = view;
        remove = action("elements.remove", () -> typing(TypedText::delete, view::remove));
        duplicate = action("elements.duplicate", view::duplicate);
        IAction all = action("elements.select-all", () -> typing(TypedText::selectAll, view::selectAll));
        Map.of(ActionFactory.CUT, cut, ActionFactory.COPY, copy, ActionFactory.PASTE, paste, ActionFactory.DELETE, remove,
                ActionFactory.SELECT_ALL, all)
                .forEach((factory, action) -> {
                    action.setActionDefinitionId(factory.getCommandId());
                    bars.setGlobalActionHandler(factory.getId(), action);
                });
        List.of(duplicate, paste, show, readBack).forEach(bars.getMenuManager()::add);
        bars.updateActionBars();
    }

    private static IAction action(String key, Runnable work) {
        IAction made = new Action(Messages.get(key)) {
            @Override
            public void run() {
                work.run();
            }
        };
        made.setToolTipText(Messages.get(key));
        return made;
    }

    /** Does something with the field that is being typed into; where there is none, with the rows. */
    private static void typing(Consumer<TypedText> there, Runnable rows) {
        TypedText.focused().ifPresentOrElse(there, rows);
    }

    void menu(Control control) {
        MenuManager menu = new MenuManager();
        List.of(cut, copy, paste, duplicate, remove).forEach(menu::add);
        menu.add(new Separator());
        menu.add(show);
        menu.add(readBack);
        control.setMenu(menu.createContextMenu(control));
    }

    void enable(boolean duplicates) {
        duplicate.setEnabled(duplicates);
    }

    /** Selects the first of the selected rows in the plan, or what holds it there. */
    void show() {
        view.selected().stream().findFirst().ifPresent(view::reveal);
    }

    private void copy() {
        view.sheet().filter(sheet -> !view.selected().isEmpty()).ifPresent(sheet -> {
            List<Identified> rows = view.selected();
            CopiedElements copied = CopiedElements.of(view.kind().isListed() ? rows : List.of());
            copied.copy(sheet.text(rows));
        });
    }

    private void cut() {
        copy();
        view.remove();
    }

    /** Adds what was copied here or in the plan with all that it holds, else a row for each line of the clipboard. */
    void paste() {
        List<CopiedElements.Kept> kept = CopiedElements.onClipboard().map(CopiedElements::kept).orElse(List.of()).stream()
                .filter(one -> view.kind().reference().equals(Optional.of(one.reference()))).toList();
        if (!kept.isEmpty()) {
            view.paste(kept);
            return;
        }
        Clipboard clipboard = new Clipboard(view.table().getDisplay());
        try {
            Object text = clipboard.getContents(TextTransfer.getInstance());
            view.paste(text == null ? "" : String.valueOf(text));
        } finally {
            clipboard.dispose();
        }
    }

    /** Asks what a second person held against its source, the selected elements ticked. */
    void readBack() {
        view.document().ifPresent(document -> ReadBackDialog.ask(view.getSite().getShell(), document, view.selected()));
    }
}
