package slopewright.ui.plan.internal.survey;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.Stream;

import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import slopewright.edit.EditException;
import slopewright.edit.TakeSurvey;
import slopewright.exchange.ExchangeException;
import slopewright.exchange.survey.SurveyHeights;
import slopewright.exchange.survey.SurveyReading;
import slopewright.model.Project;
import slopewright.model.SurveyBlock;
import slopewright.model.io.AtomicFile;
import slopewright.model.io.ProjectFile;
import slopewright.ui.MessageTexts;
import slopewright.ui.diagram.commands.HistoryCommand;
import slopewright.ui.document.DocumentListener;
import slopewright.ui.plan.internal.Messages;
import slopewright.ui.plan.internal.PlanContext;

/**
 * Asks what a survey file is to become. It stands beside the plan, which shows where everything would lie; line by line it says what is
 * taken and what is refused. Nothing changes before the user imports, in one step that can be undone.
 */
public final class ImportDialog extends TitleAreaDialog {

    private static final int SAID_LINES = 9;
    private static final int WIDTH = 620;

    private final PlanContext context;
    private final SurveyChoices choices;
    private final ImportPreview preview;
    private final DocumentListener edits = new DocumentListener() {

        @Override
        public void changed(Set<String> elementIds) {
            review();
        }
    };
    private final Map<SurveyChoices.Entry, Text> texts = new EnumMap<>(SurveyChoices.Entry.class);
    private Optional<SurveyReading> reading = Optional.empty();
    private Button wholeOnly;
    private Text said;
    private long asked;

    /**
     * Makes the dialog.
     *
     * @param shell   the window
     * @param context the plan
     * @param file    the survey file
     * @throws ExchangeException where it is a table that cannot be read
     */
    public ImportDialog(Shell shell, PlanContext context, Path file) throws ExchangeException {
        super(shell);
        this.context = context;
        this.choices = new SurveyChoices(file);
        this.preview = new ImportPreview(context);
        setShellStyle(SWT.CLOSE | SWT.TITLE | SWT.BORDER | SWT.RESIZE | SWT.MODELESS);
        setBlockOnOpen(false);
        context.document().addListener(edits);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        getShell().setText(Messages.get("import.title"));
        setTitle(Messages.get("import.title"));
        setMessage(Messages.get("import.hint", choices.file().getFileName()));
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(4).spacing(8, 6).applyTo(area);
        GridDataFactory.fillDefaults().grab(true, true).hint(WIDTH, SWT.DEFAULT).applyTo(area);
        combo(area, "import.form", Stream.of("obstacles", "ground-levels", "block").map(key -> Messages.get("import.form." + key)).toList(),
                index -> choices.chooseTaken(SurveyReading.Form.values()[index]));
        combo(area, "import.heights", Stream.of(SurveyHeights.Meaning.values()).map(meaning -> Messages.get("import.heights."
                + meaning.key())).toList(), index -> {
                    choices.chooseHeights(SurveyHeights.Meaning.values()[index]);
                    texts.forEach((entry, text) -> text.setEnabled(choices.isAsked(entry)));
                });
        for (SurveyChoices.Entry entry : SurveyChoices.Entry.values()) {
            text(area, entry);
        }
        if (choices.table().isPresent()) {
            GridDataFactory.fillDefaults().grab(true, true).span(4, 1).applyTo(new ColumnsPart(area, choices, this::review));
        }
        wholeOnly = new Button(area, SWT.CHECK);
        wholeOnly.setText(Messages.get("import.whole-only"));
        wholeOnly.addListener(SWT.Selection, event -> tell());
        GridDataFactory.fillDefaults().span(4, 1).applyTo(wholeOnly);
        said = new Text(area, SWT.MULTI | SWT.READ_ONLY | SWT.BORDER | SWT.V_SCROLL | SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, true).span(4, 1).hint(SWT.DEFAULT, SAID_LINES * said.getLineHeight()).applyTo(said);
        review();
        return area;
    }

    /** It stands at the right edge of the window, so that the plan is seen beside it. */
    @Override
    protected Point getInitialLocation(Point size) {
        Rectangle window = getParentShell().getBounds();
        return new Point(window.x + Math.max(0, window.width - size.x), window.y + Math.max(0, (window.height - size.y) / 2));
    }

    private void combo(Composite area, String key, List<String> items, IntConsumer chosen) {
        new Label(area, SWT.NONE).setText(Messages.get(key));
        Combo combo = new Combo(area, SWT.READ_ONLY | SWT.DROP_DOWN);
        combo.setItems(items.toArray(String[]::new));
        combo.select(0);
        combo.setData("question", key);
        combo.addListener(SWT.Selection, event -> {
            chosen.accept(combo.getSelectionIndex());
            review();
        });
        GridDataFactory.fillDefaults().grab(true, false).minSize(combo.computeSize(SWT.DEFAULT, SWT.DEFAULT).x, 0).applyTo(combo);
    }

    private void text(Composite area, SurveyChoices.Entry entry) {
        new Label(area, SWT.NONE).setText(choices.label(entry));
        Text text = new Text(area, SWT.BORDER);
        text.setText(choices.text(entry));
        text.setData("question", entry.key());
        text.addListener(SWT.Modify, event -> {
            choices.type(entry, text.getText());
            review();
        });
        if (entry == SurveyChoices.Entry.CLASSES) {
            text.setMessage(Messages.get("import.classes.empty"));
            text.setToolTipText(Messages.get("import.classes.empty"));
        }
        text.setEnabled(choices.isAsked(entry));
        texts.put(entry, text);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
    }

    /** Reads the file as it is chosen now, in the background; the latest choice wins. */
    private void review() {
        long number = ++asked;
        reading = Optional.empty();
        enable(false);
        said.setText(Messages.get("import.reading"));
        SurveyChoices.Reading wanted;
        try {
            wanted = choices.reading(ProjectFile.copy(context.project()));
        } catch (IllegalArgumentException e) {
            refuse(MessageTexts.reason(e));
            return;
        }
        setErrorMessage(null);
        Display display = getShell().getDisplay();
        Job job = Job.create(Messages.get("import.reading"), monitor -> {
            Runnable then;
            try {
                SurveyReading found = wanted.read();
                then = () -> take(number, found);
            } catch (ExchangeException e) {
                then = () -> refuse(number, String.join("\n", e.messages().stream().map(MessageTexts::of).toList()));
            } catch (RuntimeException e) {
                then = () -> refuse(number, MessageTexts.reason(e));
            }
            Runnable answer = then;
            if (!display.isDisposed()) {
                display.asyncExec(answer);
            }
            return Status.OK_STATUS;
        });
        job.setSystem(true);
        job.schedule();
    }

    private boolean isLatest(long number) {
        return number == asked && getShell() != null && !getShell().isDisposed();
    }

    private void refuse(long number, String reason) {
        if (isLatest(number)) {
            refuse(reason);
        }
    }

    private void refuse(String reason) {
        preview.show(Optional.empty());
        said.setText(reason);
        setErrorMessage(reason.lines().findFirst().orElse(""));
    }

    private void take(long number, SurveyReading found) {
        if (isLatest(number)) {
            reading = Optional.of(found);
            preview.show(reading);
            tell();
        }
    }

    /** Says what was read, line by line. */
    private void tell() {
        if (reading.isEmpty()) {
            return;
        }
        SurveyReading found = reading.get();
        StringBuilder text = new StringBuilder(Messages.get(found.points().isPresent() ? "import.taken-points" : "import.taken",
                found.count(), found.repeated(), found.refusedCount()));
        found.refused().forEach(line -> text.append('\n').append(Messages.get("import.refused", MessageTexts.of(line))));
        if (found.refusedCount() > found.refused().size()) {
            text.append('\n').append(Messages.get("import.more", found.refusedCount() - found.refused().size()));
        }
        found.notes().forEach(line -> text.append('\n').append(Messages.get("import.note", MessageTexts.of(line))));
        said.setText(text.toString());
        String fault = found.ending().map(reason -> Messages.get("import.not-to-its-end")).orElseGet(() -> wholeOnly.getSelection()
                && found.refusedCount() > 0 ? Messages.get("import.not-whole") : null);
        setErrorMessage(fault);
        enable(fault == null && found.count() > 0);
    }

    private void enable(boolean can) {
        Button ok = getButton(IDialogConstants.OK_ID);
        if (ok != null) {
            ok.setEnabled(can);
        }
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, Messages.get("import.import"), true).setEnabled(false);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
    }

    @Override
    protected void okPressed() {
        Project project = context.project();
        SurveyReading found = reading.orElseThrow();
        try {
            if (found.blockBytes().isPresent()) {
                write((SurveyBlock) found.elements().get(0), found.blockBytes().get());
            }
            TakeSurvey edit = TakeSurvey.of(Messages.get("import.edit", choices.file().getFileName()), project, found.elements());
            context.document().removeListener(edits);
            context.diagram().viewer().getEditDomain().getCommandStack().execute(new HistoryCommand(edit));
            choices.keep();
            super.okPressed();
        } catch (IOException e) {
            setErrorMessage(MessageTexts.reason(e));
        } catch (EditException e) {
            setErrorMessage(MessageTexts.reason(e));
        }
    }

    /** The file of a block lies beside the project; one that is there already is the same one, for its name holds its hash. */
    private void write(SurveyBlock block, byte[] bytes) throws IOException {
        Path folder = context.document().path().map(path -> path.toAbsolutePath().getParent())
                .orElseThrow(() -> new IOException(Messages.get("import.no-folder")));
        Path file = folder.resolve(block.getPath());
        try {
            AtomicFile.create(file, bytes);
        } catch (FileAlreadyExistsException e) {
            if (!Arrays.equals(Files.readAllBytes(file), bytes)) {
                throw e;
            }
        }
    }

    @Override
    public boolean close() {
        asked++;
        context.document().removeListener(edits);
        preview.remove();
        return super.close();
    }
}
