package slopewright.ui.review.internal;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;

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
import slopewright.standards.RuleSet;
import slopewright.ui.MessageTexts;
import slopewright.ui.preferences.Preferences;
import slopewright.ui.properties.OutcomeTexts;

/**
 * Asks for a value as it stands in the issued document, and who read it there. The number is typed, not offered: only one that is the same
 * confirms the value.
 */
public final class ConfirmDialog extends TitleAreaDialog {

    private static final double SAME = 1e-9;

    private final Citation citation;
    private final RuleSet rules;
    private Text number;
    private Text source;
    private Text clause;
    private Text person;
    private ValueConfirmation confirmation;

    /**
     * Makes the dialog.
     *
     * @param shell    its parent
     * @param citation the value
     * @param rules    the rule set that has it
     */
    public ConfirmDialog(Shell shell, Citation citation, RuleSet rules) {
        super(shell);
        this.citation = citation;
        this.rules = rules;
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

    private Optional<String> unit() {
        return rules.unit(citation.key());
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        setTitle(Messages.get("confirm.title", citation.key()));
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(10, 10).applyTo(area);
        String unit = unit().filter(text -> !text.isEmpty()).map(text -> " (" + text + ")").orElse("");
        number = field(area, Messages.get(unit().isPresent() ? "confirm.number" : "confirm.total") + unit);
        source = field(area, Messages.get("confirm.source"));
        clause = field(area, Messages.get("confirm.clause"));
        person = field(area, Messages.get("confirm.person"));
        setMessage(Messages.get("confirm.message", citation.text(), OutcomeTexts.provenance(citation.provenance())));
        return area;
    }

    private Text field(Composite area, String label) {
        new Label(area, SWT.NONE).setText(label + ":");
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
        OptionalDouble known = rules.confirmable(citation.key());
        if (known.isEmpty()) {
            setMessage(Messages.get("confirm.none", citation.key()), IMessageProvider.ERROR);
            return;
        }
        double typed;
        try {
            typed = Double.parseDouble(number.getText().strip().replace(',', '.'));
        } catch (NumberFormatException e) {
            setMessage(Messages.get("confirm.no-number", number.getText()), IMessageProvider.ERROR);
            return;
        }
        if (!(Math.abs(typed - known.getAsDouble()) <= SAME * Math.max(1, Math.abs(known.getAsDouble())))) {
            setMessage(Messages.get("confirm.other", number.getText().strip(), MessageTexts.renderer().plain(known.getAsDouble())),
                    IMessageProvider.ERROR);
            return;
        }
        confirmation = SlopewrightFactory.eINSTANCE.createValueConfirmation();
        confirmation.setValueKey(citation.key());
        confirmation.setRuleSetKey(Preferences.nameOf(rules));
        confirmation.setEdition(rules.edition());
        confirmation.setValue(known.getAsDouble());
        unit().ifPresent(confirmation::setUnit);
        confirmation.setSource(source.getText().strip());
        confirmation.setClause(clause.getText().isBlank() ? null : clause.getText().strip());
        confirmation.setPerson(person.getText().strip());
        confirmation.setDate(LocalDate.now().toString());
        super.okPressed();
    }
}
