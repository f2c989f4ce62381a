package slopewright.ui.properties;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Display;

import slopewright.edit.EditException;
import slopewright.edit.KeepReadBack;
import slopewright.evaluation.ReadBacks;
import slopewright.model.Identified;
import slopewright.siting.ElementNames;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.ProjectDocument;

/** Keeps that a second person held the entries of the shown element against their source today, after asking for the name. */
final class ReadBackAction extends Action {
    private Optional<Identified> element = Optional.empty();

    ReadBackAction() {
        super(PropertyTexts.get("sheet.readBack"));
        setEnabled(false);
    }

    /** Says which element is shown. */
    void offer(Optional<Identified> shown) {
        element = shown.filter(selected -> ProjectDocument.of(selected).isPresent()).flatMap(ReadBacks::holder);
        setEnabled(element.isPresent());
    }

    @Override
    public void run() {
        element.ifPresent(target -> {
            LocalDate today = LocalDate.now();
            InputDialog dialog = new InputDialog(Display.getCurrent().getActiveShell(), getText(),
                    PropertyTexts.get("sheet.readBack.ask", MessageTexts.of(ElementNames.of(target))), "",
                    name -> fault(target, name, today));
            if (dialog.open() == Window.OK) {
                ProjectDocument.of(target).ifPresent(document -> document.history()
                        .perform(KeepReadBack.of(List.of(target), dialog.getValue(), today)));
            }
        });
    }

    private static String fault(Identified target, String name, LocalDate today) {
        try {
            KeepReadBack.of(List.of(target), name, today);
            return null;
        } catch (EditException e) {
            return MessageTexts.reason(e);
        }
    }
}
