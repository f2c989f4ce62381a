package slopewright.ui.review.internal;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Text;

import slopewright.checks.Outcome;
import slopewright.ui.AccessibleName;
import slopewright.ui.Images;
import slopewright.ui.MessageTexts;
import slopewright.ui.document.ProjectDocument;
import slopewright.ui.properties.Field;
import slopewright.ui.review.QuickFix.Reach;
import slopewright.ui.review.internal.notes.NoteTexts;

/** The selected finding in full, with the remedies that were tried out; each shows what it would change before it is applied. */
public final class FindingDetails {

    /** What the user can ask for here. */
    public interface Actions {

        /** Applies a remedy. */
        void apply(TriedFix cure);

        /** Confirms the value that decided an outcome. */
        void confirm(Outcome outcome);

        /**
         * Fills an entry that is missing.
         *
         * @return why it cannot; empty where it was filled
         */
        Optional<String> fill(Field field, String typed);
    }

    private static final int LEAST_WIDTH = 200;
    private static final int MARGIN = 16;
    private static final int FIELD_WIDTH = 110;

    private final ScrolledComposite scroller;
    private final Composite content;
    private final Composite head;
    private final Label sign;
    private final Label heading;
    private final StyledText brief;
    private final Composite links;
    private final StyledText rest;
    private final LocalResourceManager resources;
    private final Actions actions;
    private Optional<Outcome> subject = Optional.empty();
    private Optional<Job> trial = Optional.empty();
    private List<TriedFix> cures = List.of();
    private List<MissingFields.Entry> missing = List.of();
    private int shown;

    /** Makes the area. */
    public FindingDetails(Composite parent, Actions actions) {
        this.actions = actions;
        scroller = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroller.setExpandHorizontal(true);
        scroller.setExpandVertical(true);
        content = new Composite(scroller, SWT.NONE);
        scroller.setContent(content);
        resources = new LocalResourceManager(JFaceResources.getResources(), content);
        GridLayoutFactory.fillDefaults().margins(6, 2).spacing(4, 4).applyTo(content);
        head = new Composite(content, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(head);
        sign = new Label(head, SWT.NONE);
        GridDataFactory.fillDefaults().align(SWT.BEGINNING, SWT.BEGINNING).applyTo(sign);
        heading = new Label(head, SWT.WRAP);
        heading.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(heading);
        brief = text(content, Messages.get("details.brief"));
        links = new Composite(content, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(4, 2).applyTo(links);
        rest = text(content, Messages.get("details.rest"));
        scroller.addListener(SWT.Resize, event -> layout());
        clear(Messages.get("details.none"));
    }

    private static StyledText text(Composite parent, String name) {
        StyledText text = new StyledText(parent, SWT.READ_ONLY | SWT.WRAP);
        text.setCaret(null);
        text.setBackground(parent.getBackground());
        text.setForeground(parent.getForeground());
        AccessibleName.give(text, name);
        return text;
    }

    /** Returns the area. */
    public Control control() {
        return scroller;
    }

    /** Returns the explanation that is shown, with a preview where one is open. */
    public String text() {
        String preview = Stream.of(links.getChildren()).filter(StyledText.class::isInstance).map(text -> ((StyledText) text).getText())
                .findFirst().map(text -> "\n" + text).orElse("");
        return brief.getText() + preview + "\n" + rest.getText();
    }

    /** Returns the remedies found so far for what is shown. */
    public List<TriedFix> cures() {
        return cures;
    }

    /** Shows a sentence instead of a finding. */
    public void clear(String sentence) {
        endTrial();
        subject = Optional.empty();
        head("", null);
        brief.setText(sentence);
        rest.setText("");
        layout();
    }

    private void head(String text, Image image) {
        heading.setText(text);
        sign.setImage(image);
        head.setVisible(!text.isEmpty());
        ((GridData) head.getLayoutData()).exclude = text.isEmpty();
    }

    /** Shows an outcome and looks for remedies. */
    public void show(Outcome outcome, ProjectDocument document) {
        endTrial();
        subject = Optional.of(outcome);
        head(outcome.rule() + "  " + MessageTexts.of(outcome.title()), Images.of(outcome.verdict()).image(resources));
        brief.setText(OutcomeExplanation.brief(outcome));
        rest.setText(OutcomeExplanation.rest(outcome) + NoteTexts.said(document.project(), outcome));
        missing = MissingFields.of(outcome, document.project());
        offer(List.of());
        scroller.setOrigin(0, 0);
        int number = shown;
        trial = Optional.of(FixTrial.start(outcome, document, content.getDisplay(), found -> {
            if (!content.isDisposed() && number == shown) {
                offer(found);
            }
        }));
    }

    /** Shows how many findings are selected, and looks for one step that cures as many of them as can be. */
    public void showSeveral(List<Outcome> outcomes, ProjectDocument document) {
        clear(Messages.get("details.several", outcomes.size()));
        int number = shown;
        trial = Optional.of(FixTrial.startSeveral(outcomes, document, content.getDisplay(), found -> {
            if (!content.isDisposed() && number == shown) {
                brief.setText(Messages.get(found.isEmpty() ? "details.several.none" : "details.several", outcomes.size()));
                offer(found);
            }
        }));
    }

    private void offer(List<TriedFix> found) {
        cures = found;
        clearLinks();
        subject.filter(Outcome::toConfirm).ifPresent(outcome -> link(Messages.get("details.confirm"), () -> actions.confirm(outcome)));
        missing.forEach(this::entry);
        found.forEach(cure -> link(cure.text(), () -> preview(cure)));
        layout();
    }

    /** Shows what a remedy would change and lead to, with a button that applies it. */
    public void preview(TriedFix cure) {
        clearLinks();
        StyledText text = text(links, Messages.get("details.preview"));
        text.setText(cure.fix().label() + "\n" + cure.preview());
        Composite buttons = new Composite(links, SWT.NONE);
        RowLayoutFactory.fillDefaults().spacing(6).applyTo(buttons);
        if (cure.fix().reach() != Reach.PROPOSE) {
            button(buttons, Messages.get("details.apply"), () -> actions.apply(cure)).setFocus();
        }
        button(buttons, Messages.get("details.back"), () -> offer(cures));
        layout();
        scroller.showControl(buttons);
    }

    private static Button button(Composite parent, String text, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(text);
        button.addListener(SWT.Selection, event -> action.run());
        return button;
    }

    /** A field for an entry that is missing: filled by Enter, or by the choice. */
    private void entry(MissingFields.Entry entry) {
        Composite row = new Composite(links, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(6, 2).applyTo(row);
        Label label = new Label(row, SWT.WRAP);
        label.setText(entry.label());
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(label);
        List<String> choices = entry.field().choices();
        Control field;
        if (choices.isEmpty()) {
            Text text = new Text(row, SWT.BORDER);
            text.addListener(SWT.DefaultSelection, event -> fill(entry, text, text.getText()));
            field = text;
        } else {
            Combo combo = new Combo(row, SWT.READ_ONLY);
            combo.setItems(choices.toArray(String[]::new));
            combo.addListener(SWT.Selection, event -> fill(entry, combo, combo.getText()));
            field = combo;
        }
        AccessibleName.give(field, entry.label());
        GridDataFactory.swtDefaults().align(SWT.END, SWT.CENTER).hint(FIELD_WIDTH, SWT.DEFAULT).applyTo(field);
    }

    private void fill(MissingFields.Entry entry, Control field, String typed) {
        Optional<String> problem = actions.fill(entry.field(), typed);
        if (!field.isDisposed()) {
            field.setToolTipText(problem.orElse(null));
            problem.ifPresent(text -> brief.setText(text));
            layout();
        }
    }

    /** Returns the labels of the entries that can be filled here. */
    public List<String> entries() {
        return missing.stream().map(MissingFields.Entry::label).toList();
    }

    private void link(String label, Runnable action) {
        Link link = new Link(links, SWT.WRAP);
        link.setText("<a>" + label.replace("&", "&&") + "</a>");
        link.addListener(SWT.Selection, event -> action.run());
    }

    private void layout() {
        int width = Math.max(LEAST_WIDTH, scroller.getClientArea().width);
        GridDataFactory rows = GridDataFactory.fillDefaults().grab(true, false).hint(width - MARGIN, SWT.DEFAULT);
        rows.applyTo(brief);
        rows.applyTo(rest);
        Stream.of(links.getChildren()).forEach(rows::applyTo);
        Stream.of(brief, rest).forEach(text -> text.setBackground(content.getBackground()));
        boolean none = links.getChildren().length == 0;
        GridDataFactory.fillDefaults().grab(true, false).exclude(none).applyTo(links);
        links.setVisible(!none);
        content.layout(true, true);
        scroller.setMinSize(content.computeSize(width, SWT.DEFAULT));
    }

    private void endTrial() {
        shown++;
        trial.ifPresent(Job::cancel);
        trial = Optional.empty();
        cures = List.of();
        missing = List.of();
        clearLinks();
    }

    private void clearLinks() {
        for (Control child : links.getChildren()) {
            child.dispose();
        }
    }
}
