package slopewright.ui.review.internal;

import java.time.LocalDate;

import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;

import slopewright.model.SlopewrightFactory;
import slopewright.model.ValueConfirmation;
import slopewright.standards.Citation;
import slopewright.ui.properties.OutcomeTexts;

/** Asks who has confirmed a value in which document. */
public final class ConfirmDialog extends TitleAreaDialog {

    private final Citation citation;
    private final String ruleSet;
    private Text source;
    private Text person;
    private ValueConfirmation confirmation;

    /**
     * Makes the dialog.
     *
     * @param shell    its parent
     * @param citation the value
     * @param ruleSet  key of the rule set that has it
     */
    public ConfirmDialog(Shell shell, Citation citation, String ruleSet) {
        super(shell);
        this.citation = citation;
        this.ruleSet = ruleSet;
        setHelpAvailable(false);
    }

    /** Returns what the user entered, once the dialog was closed with OK. */
    public ValueConfirmation confirmation() {
        return confirmation;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(Messages.get("confirm.shell"));
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        setTitle(Messages.get("confirm.title", citation.key()));
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(10, 10).applyTo(area);
        source = field(area, Messages.get("confirm.source"));
        person = field(area, Messages.get("confirm.person"));
        setMessage(Messages.get("confirm.message", citation.text(), OutcomeTexts.provenance(citation.provenance())));
        return area;
    }

    private Text field(Composite area, String label) {
        new Label(area, SWT.NONE).setText(label);
        Text text = new Text(area, SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).hint(320, SWT.DEFAULT).applyTo(text);
        return text;
    }

    @Override
    protected void okPressed() {
        if (source.getText().isBlank() || person.getText().isBlank()) {
            setMessage(Messages.get("confirm.incomplete"), IMessageProvider.ERROR);
            return;
        }
        confirmation = SlopewrightFactory.eINSTANCE.createValueConfirmation();
        confirmation.setValueKey(citation.key());
        confirmation.setRuleSetKey(ruleSet);
        confirmation.setSource(source.getText().strip());
        confirmation.setPerson(person.getText().strip());
        confirmation.setDate(LocalDate.now().toString());
        super.okPressed();
    }
}
