package slopewright.ui.review.internal;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Link;

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

    private final ScrolledComposite scroller;
    private final Composite content;
    private final CLabel heading;
    private final StyledText brief;
    private final Composite links;
    private final StyledText rest;
    private final LocalResourceManager resources;
    private final Actions actions;
    private Optional<Job> trial = Optional.empty();
    private List<Cure> cures = List.of();
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
        heading = new CLabel(content, SWT.NONE);
        heading.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(heading);
        brief = text("What was found and what to do");
        links = new Composite(content, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(4, 2).applyTo(links);
        rest = text("Numbers, source and rule");
        scroller.addListener(SWT.Resize, event -> layout());
        clear("Select a finding to see how it came about and what to do.");
    }

    private StyledText text(String name) {
        StyledText text = new StyledText(content, SWT.READ_ONLY | SWT.WRAP);
        text.setCaret(null);
        text.setBackground(content.getBackground());
        text.getAccessible().addAccessibleListener(AccessibleName.of(name));
        return text;
    }

    /** Returns the area. */
    public Control control() {
        return scroller;
    }

    /** Returns the explanation that is shown. */
    public String text() {
        return brief.getText() + "\n" + rest.getText();
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
        brief.setText(sentence);
        rest.setText("");
        layout();
    }

    /** Shows an outcome and looks for remedies. */
    public void show(Outcome outcome, Project project) {
        endTrial();
        heading.setImage(Images.of(outcome).image(resources));
        heading.setText(outcome.rule() + "  " + outcome.title());
        brief.setText(OutcomeExplanation.brief(outcome));
        rest.setText(OutcomeExplanation.rest(outcome));
        if (outcome.toConfirm()) {
            link("Confirm the value…", () -> actions.confirm(outcome));
        }
        scroller.setOrigin(0, 0);
        layout();
        int number = shown;
        trial = Optional.of(FixTrial.start(outcome, project, content.getDisplay(), found -> offer(found, number)));
    }

    private void offer(List<Cure> found, int number) {
        if (content.isDisposed() || number != shown) {
            return;
        }
        cures = found;
        found.forEach(cure -> link(cure.text(), () -> actions.apply(cure)));
        layout();
    }

    private void link(String label, Runnable action) {
        Link link = new Link(links, SWT.WRAP);
        link.setText("<a>" + label + "</a>");
        link.addListener(SWT.Selection, event -> action.run());
    }

    private void layout() {
        int width = Math.max(200, scroller.getClientArea().width);
        GridDataFactory rows = GridDataFactory.fillDefaults().grab(true, false).hint(width - 16, SWT.DEFAULT);
        rows.applyTo(brief);
        rows.applyTo(rest);
        Stream.of(links.getChildren()).forEach(rows::applyTo);
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
        for (Control child : links.getChildren()) {
            child.dispose();
        }
    }
}
