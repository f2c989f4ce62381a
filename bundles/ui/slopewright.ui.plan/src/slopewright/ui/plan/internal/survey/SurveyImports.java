package slopewright.ui.plan.internal.survey;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

import org.eclipse.gef.EditPartViewer;
import org.eclipse.jface.util.TransferDropTargetListener;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.FileDialog;

import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyFile;
import slopewright.ui.MessageTexts;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;

/** Lets a survey file be chosen, or dropped on the plan, and asks what it is to become. */
public final class SurveyImports {

    private final PlanContext context;

    /** Makes it for a plan, on whose viewer files can be dropped from now on. */
    public SurveyImports(PlanContext context) {
        this.context = context;
        context.diagram().viewer().addDropTargetListener(new FileDrop(context.diagram().viewer()));
    }

    /** Lets the user choose a file. */
    public void choose() {
        List<String> endings = SurveyFile.endings().stream().flatMap(ending -> List.of("*." + ending,
                "*." + ending.toUpperCase(Locale.ROOT)).stream()).toList();
        FileDialog dialog = new FileDialog(context.diagram().viewer().getControl().getShell(), SWT.OPEN);
        dialog.setText(Messages.get("import.title"));
        dialog.setFilterNames(new String[] {Messages.get("import.files")});
        dialog.setFilterExtensions(new String[] {String.join(";", endings)});
        String chosen = dialog.open();
        if (chosen != null) {
            open(Path.of(chosen));
        }
    }

    /** Asks what a file is to become. */
    public void open(Path file) {
        if (context.plane().isEmpty()) {
            context.notice(Messages.get("import.no-place"));
            return;
        }
        try {
            new ImportDialog(context.diagram().viewer().getControl().getShell(), context, file).open();
        } catch (ExchangeException e) {
            context.notice(MessageTexts.reason(e));
        }
    }

    /** Takes a file that is dropped on the plan. */
    private final class FileDrop extends DropTargetAdapter implements TransferDropTargetListener {

        private final EditPartViewer viewer;

        FileDrop(EditPartViewer viewer) {
            this.viewer = viewer;
        }

        @Override
        public Transfer getTransfer() {
            return FileTransfer.getInstance();
        }

        @Override
        public boolean isEnabled(DropTargetEvent event) {
            return FileTransfer.getInstance().isSupportedType(event.currentDataType);
        }

        @Override
        public void dragEnter(DropTargetEvent event) {
            event.detail = DND.DROP_COPY;
        }

        @Override
        public void drop(DropTargetEvent event) {
            if (event.data instanceof String[] files && files.length > 0) {
                Path first = Path.of(files[0]);
                viewer.getControl().getDisplay().asyncExec(() -> open(first));
            }
        }
    }
}
