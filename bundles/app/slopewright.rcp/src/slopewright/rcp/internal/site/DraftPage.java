package slopewright.rcp.internal.site;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.jface.dialogs.IMessageProvider;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;

import slopewright.checks.Outcome;
import slopewright.checks.Result;
import slopewright.checks.Verdict;
import slopewright.evaluation.site.SiteNumber;
import slopewright.model.Identified;
import slopewright.rcp.internal.Messages;
import slopewright.ui.MessageTexts;
import slopewright.ui.units.QuantityFormat;

/** A step of the wizard with numbers in it; says below the title what is wrong, or what is still assumed. */
abstract class DraftPage extends WizardPage {

    private static final String EPOCH_RULE = "DATA-67";

    private final Map<SiteNumber, Text> texts = new EnumMap<>(SiteNumber.class);
    private final Map<SiteNumber, Label> remarks = new EnumMap<>(SiteNumber.class);
    private final SiteDraft draft;

    DraftPage(String name, SiteDraft draft) {
        super(name);
        this.draft = draft;
        setTitle(Messages.get(name + ".title"));
        setDescription(Messages.get(name + ".hint"));
    }

    SiteDraft draft() {
        return draft;
    }

    /** Adds the row of a number: label with unit, text, and the remark that it is assumed. */
    void row(Composite parent, SiteNumber number) {
        String unit = QuantityFormat.preferred().unit(SiteDraft.quantity(number));
        String words = SiteDraft.label(number) + (unit.isEmpty() ? "" : " (" + unit + ")");
        Text text = Answers.text(parent, words, draft.text(number), typed -> {
            draft.type(number, typed);
            review();
        });
        text.setData("field", number);
        texts.put(number, text);
        remarks.put(number, Answers.label(parent, Messages.get(number == SiteNumber.EPOCH ? "site.epoch-wanted" : "site.assumed")));
    }

    /** Begins in the first field, whatever led here. */
    @Override
    public void setVisible(boolean visible) {
        super.setVisible(visible);
        if (visible) {
            getControl().setFocus();
        }
    }

    /** Shows what the draft holds, after a template was taken. */
    void reload() {
        texts.forEach((number, text) -> text.setText(draft.text(number)));
    }

    /** Says whether numbers are asked for after all; what is not has no remark either. */
    void enable(boolean asked, SiteNumber... numbers) {
        for (SiteNumber number : numbers) {
            texts.get(number).setEnabled(asked);
            remarks.get(number).setVisible(asked && draft.site().isAssumed(number));
        }
    }

    /** Looks through what is typed. */
    void review() {
        texts.forEach((number, text) -> text.setEnabled(number.isAsked(draft.site().isHelipad())));
        remarks.forEach((number, label) -> label.setVisible(number.isAsked(draft.site().isHelipad()) && draft.site().isAssumed(number)));
        boolean assumed = remarks.values().stream().anyMatch(Label::getVisible);
        Optional<String> problem = problem();
        setErrorMessage(problem.orElse(null));
        Optional<String> broken = problem.isPresent() ? Optional.empty() : broken();
        setMessage(broken.orElse(draft.site().known().isPresent() ? Messages.get("site.open-data")
                : assumed ? Messages.get("site.check-assumed") : null),
                broken.isPresent() ? IMessageProvider.WARNING : IMessageProvider.INFORMATION);
        setPageComplete(problem.isEmpty());
    }

    /** Returns what a rule says against what is typed here, empty where none does; marks the epoch where a rule asks for it. */
    private Optional<String> broken() {
        try {
            List<Outcome> outcomes = draft.outcomes(this::isAsked);
            if (texts.containsKey(SiteNumber.EPOCH)) {
                remarks.get(SiteNumber.EPOCH).setVisible(outcomes.stream().anyMatch(outcome -> outcome.rule().equals(EPOCH_RULE)
                        && outcome.result() == Result.NOT_EVALUATED));
            }
            return outcomes.stream().filter(outcome -> outcome.verdict() == Verdict.NOT_MET).findFirst()
                    .map(outcome -> outcome.rule() + ": " + MessageTexts.of(outcome.explanation()));
        } catch (IllegalArgumentException e) {
            return Optional.of(MessageTexts.reason(e));
        }
    }

    /** Returns whether an element of the site is one that this page asks about. */
    abstract boolean isAsked(Identified element);

    /** Returns the first thing that is wrong on this page. */
    Optional<String> problem() {
        List<SiteNumber> numbers = Stream.of(SiteNumber.values()).filter(texts::containsKey).toList();
        return numbers.stream().map(draft::problem).flatMap(Optional::stream).filter(Objects::nonNull).findFirst();
    }
}
