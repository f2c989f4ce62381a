package slopewright.ui.review.internal;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;

import slopewright.checks.Outcome;
import slopewright.model.Project;
import slopewright.ui.Images;
import slopewright.ui.review.internal.FixTrial.Cure;

/** The selected finding in full, with the remedies that cure it. */
public final class FindingDetails {

    /** What the user can ask for here. */
    public interface Actions {

        /** Applies a remedy. */
        void apply(Cure cure);

        /** Confirms the value that decided an outcome. */
        void confirm(Outcome outcome);
    }

    private final Composite control;
    private final CLabel heading;
    private final StyledText text;
    private final Composite buttons;
    private final LocalResourceManager resources;
    private final Actions actions;
    private Optional<Job> trial = Optional.empty();
    private List<Cure> cures = List.of();
    private int shown;

    /** Makes the area. */
    public FindingDetails(Composite parent, Actions actions) {
        this.actions = actions;
        control = new Composite(parent, SWT.NONE);
        resources = new LocalResourceManager(JFaceResources.getResources(), control);
        GridLayoutFactory.fillDefaults().margins(6, 2).spacing(4, 2).applyTo(control);
        heading = new CLabel(control, SWT.NONE);
        heading.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(heading);
        text = new StyledText(control, SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL);
        text.setCaret(null);
        text.setBackground(control.getBackground());
        text.getAccessible().addAccessibleListener(AccessibleName.of("Explanation of the finding"));
        GridDataFactory.fillDefaults().grab(true, true).hint(260, 40).applyTo(text);
        buttons = new Composite(control, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(4, 2).applyTo(buttons);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(buttons);
        clear("Select a finding to see how it came about and what to do.");
    }

    /** Returns the area. */
    public Control control() {
        return control;
    }

    /** Returns the explanation that is shown. */
    public String text() {
        return text.getText();
    }

    /** Returns the remedies found so far for what is shown. */
    public List<Cure> cures() {
        return cures;
    }

    /** Shows a sentence instead of a finding. */
    public void clear(String sentence) {
        endTrial();
        heading.setText("");
        heading.setImage(null);
        text.setText(sentence);
        layoutButtons();
    }

    /** Shows an outcome and looks for remedies. */
    public void show(Outcome outcome, Project project) {
        endTrial();
        heading.setImage(Images.of(outcome).image(resources));
        heading.setText(outcome.rule() + "  " + outcome.title());
        text.setText(OutcomeExplanation.of(outcome));
        if (outcome.toConfirm()) {
            button("Confirm the value…", button -> actions.confirm(outcome));
        }
        layoutButtons();
        int number = shown;
        trial = Optional.of(FixTrial.start(outcome, project, control.getDisplay(), found -> offer(found, number)));
    }

    private void offer(List<Cure> found, int number) {
        if (control.isDisposed() || number != shown) {
            return;
        }
        cures = found;
        found.forEach(cure -> button(cure.text(), button -> actions.apply(cure)).setImage(Images.FIX.image(resources)));
        layoutButtons();
    }

    private Button button(String label, Consumer<Button> action) {
        Button button = new Button(buttons, SWT.PUSH | SWT.WRAP);
        button.setText(label);
        GridDataFactory.swtDefaults().applyTo(button);
        button.addListener(SWT.Selection, event -> action.accept(button));
        return button;
    }

    private void layoutButtons() {
        control.layout(true, true);
    }

    private void endTrial() {
        shown++;
        trial.ifPresent(Job::cancel);
        trial = Optional.empty();
        cures = List.of();
        for (Control child : buttons.getChildren()) {
            child.dispose();
        }
    }
}
